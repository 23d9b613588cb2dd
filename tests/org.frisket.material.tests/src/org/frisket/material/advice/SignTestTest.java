package org.frisket.material.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;

import org.junit.jupiter.api.Test;

class SignTestTest {

	/** Summed exactly in whole numbers. */
	@Test
	void agreesWithTheExactBinomialDistribution() {
		for (int n = 0; n <= 300; n++) {
			BigInteger chance = BigInteger.ONE;
			BigInteger tail = BigInteger.ZERO;
			BigDecimal limit = new BigDecimal("0.05").multiply(new BigDecimal(BigInteger.TWO.pow(n)));
			int k = -1;
			for (int next = 0; next <= n; next++) {
				tail = tail.add(chance);
				if (new BigDecimal(tail).compareTo(limit) > 0) {
					break;
				}
				k = next;
				chance = chance.multiply(BigInteger.valueOf(n - next)).divide(BigInteger.valueOf(next + 1));
			}
			assertEquals(k, SignTest.tooFew(n), "n " + n);
		}
	}

	/** The table of the sign test for one side of 5 %, from memory: 0 of 5, 1 of 8, 2 of 11, 3 of 13, 5 of 18. */
	@Test
	void agreesWithThePrintedTable() {
		assertEquals(-1, SignTest.tooFew(4));
		assertEquals(0, SignTest.tooFew(5));
		assertEquals(1, SignTest.tooFew(8));
		assertEquals(2, SignTest.tooFew(11));
		assertEquals(3, SignTest.tooFew(13));
		assertEquals(5, SignTest.tooFew(18));
	}

	@Test
	void beyondTheTableItStaysOnTheCautiousSide() {
		assertTrue(SignTest.tooFew(1001) <= SignTest.tooFew(1000));
		assertTrue(SignTest.tooFew(1000) - SignTest.tooFew(1001) <= 2);
	}
}
