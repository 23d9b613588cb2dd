package org.frisket.material.advice;

/**
 * Whether so few of n tries can have gone well although each was at least as likely to go well as not. The exact
 * binomial sign test (Arbuthnot 1710; Conover, Practical Nonparametric Statistics, from memory), one-sided.
 */
final class SignTest {

	/** Chance of being wrong on one side; an interval of two sides is right in nine cases of ten at least. */
	static final double SIDE = 0.05;

	/** Greatest numbers of tries that are looked up; beyond it the normal approximation is closer than anybody needs. */
	private static final int LOOKED_UP = 1000;
	private static final int[] FEW = few();

	private SignTest() {
	}

	/** The greatest number of successes in n tries that is too few; -1 if no number is. */
	static int tooFew(int n) {
		if (n < FEW.length) {
			return FEW[n];
		}
		// with correction for continuity, and rounded to the cautious side
		return (int) Math.floor(n / 2.0 - 0.5 - 1.6449 * Math.sqrt(n) / 2) - 1;
	}

	private static int[] few() {
		int[] few = new int[LOOKED_UP + 1];
		for (int n = 0; n <= LOOKED_UP; n++) {
			// the chance of k successes, kept as a logarithm so that 2^-1000 does not vanish
			double logarithm = -n * Math.log(2);
			double tail = 0;
			int k = -1;
			while (k < n) {
				tail += Math.exp(logarithm);
				if (tail > SIDE) {
					break;
				}
				k++;
				logarithm += Math.log((double) (n - k) / (k + 1));
			}
			few[n] = k;
		}
		return few;
	}
}
