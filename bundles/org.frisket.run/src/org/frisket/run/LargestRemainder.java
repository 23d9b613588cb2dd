package org.frisket.run;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Parts a sum so that the parts sum to it exactly: each gets the whole units of its share, and what is left goes by one
 * unit each to those whose shares were cut short most; the earlier first where that is the same.
 */
public final class LargestRemainder {

	private static final MathContext DIGITS = new MathContext(50);

	private LargestRemainder() {
	}

	/**
	 * @param whole    0 or more
	 * @param decimals of the smallest unit; no fewer than the whole has
	 * @param weights  0 or more; equal shares if all are 0
	 */
	public static List<BigDecimal> part(BigDecimal whole, int decimals, List<Double> weights) {
		List<BigDecimal> exact = weights.stream().map(BigDecimal::new).toList();
		BigDecimal sum = exact.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
		if (sum.signum() == 0) {
			exact = weights.stream().map(weight -> BigDecimal.ONE).toList();
			sum = new BigDecimal(weights.size());
		}
		BigDecimal unit = BigDecimal.ONE.movePointLeft(decimals);
		List<BigDecimal> parts = new ArrayList<>();
		List<BigDecimal> cut = new ArrayList<>();
		BigDecimal left = whole;
		for (BigDecimal weight : exact) {
			BigDecimal share = whole.multiply(weight).divide(sum, DIGITS);
			BigDecimal part = share.setScale(decimals, RoundingMode.DOWN);
			parts.add(part);
			cut.add(share.subtract(part));
			left = left.subtract(part);
		}
		List<Integer> order = IntStream.range(0, parts.size()).boxed()
				.sorted(Comparator.<Integer, BigDecimal>comparing(cut::get).reversed().thenComparing(i -> i)).toList();
		for (int i = 0; left.signum() > 0; i++) {
			int next = order.get(i % order.size());
			parts.set(next, parts.get(next).add(unit));
			left = left.subtract(unit);
		}
		return parts;
	}
}
