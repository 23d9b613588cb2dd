package org.frisket.material.advice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

class IsotonicFitTest {

	/** Against an independent library, SciPy 1.17.1: {@code scipy.optimize.isotonic_regression}. */
	@Test
	void agreesWithScipy() throws IOException {
		int cases = 0;
		try (InputStream in = IsotonicFitTest.class.getResourceAsStream("isotonic.txt")) {
			List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
					.filter(line -> !line.startsWith("#")).toList();
			for (String line : lines) {
				double[][] parts = Arrays.stream(line.split(";")).map(IsotonicFitTest::numbers).toArray(double[][]::new);
				assertArrayEquals(parts[2], IsotonicFit.nondecreasing(parts[0], parts[1]), 1e-9, line);
				cases++;
			}
		}
		assertEquals(150, cases);
	}

	private static double[] numbers(String text) {
		return Arrays.stream(text.strip().split(" ")).mapToDouble(Double::parseDouble).toArray();
	}

	/**
	 * Against the max-min formula (Robertson, Wright and Dykstra 1988, theorem 1.4.4; from memory), which knows nothing of
	 * pooling: the fit at i is the greatest over all j up to i of the least mean of values from j to a k from i on.
	 */
	@Test
	void agreesWithTheMaxMinFormulaInTenThousandRandomCases() {
		Random random = new Random(1955);
		for (int round = 0; round < 10_000; round++) {
			int n = 1 + random.nextInt(12);
			double[] values = random.doubles(n).map(value -> Math.rint(value * 20) / 2).toArray();
			double[] weights = random.doubles(n, 0.1, 5).toArray();
			double[] fit = IsotonicFit.nondecreasing(values, weights);
			assertArrayEquals(maxMin(values, weights), fit, 1e-9);
			for (int i = 1; i < n; i++) {
				assertTrue(fit[i - 1] <= fit[i]);
			}
		}
	}

	private static double[] maxMin(double[] values, double[] weights) {
		double[] fit = new double[values.length];
		for (int i = 0; i < fit.length; i++) {
			fit[i] = Double.NEGATIVE_INFINITY;
			for (int j = 0; j <= i; j++) {
				double least = Double.POSITIVE_INFINITY;
				for (int k = i; k < fit.length; k++) {
					double sum = 0;
					double weight = 0;
					for (int at = j; at <= k; at++) {
						sum += values[at] * weights[at];
						weight += weights[at];
					}
					least = Math.min(least, sum / weight);
				}
				fit[i] = Math.max(fit[i], least);
			}
		}
		return fit;
	}
}
