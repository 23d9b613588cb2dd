package org.frisket.material.advice;

/**
 * The nondecreasing values nearest to given ones in the sum of weighted squares, by pooling adjacent violators (Ayer,
 * Brunk, Ewing, Reid and Silverman 1955; Robertson, Wright and Dykstra, Order Restricted Statistical Inference, 1988,
 * chapter 1). In linear time.
 */
final class IsotonicFit {

	private IsotonicFit() {
	}

	/**
	 * @param values  in the order in which they must not decrease
	 * @param weights above 0, one for each value
	 */
	static double[] nondecreasing(double[] values, double[] weights) {
		int n = values.length;
		double[] sums = new double[n];
		double[] weight = new double[n];
		int[] ends = new int[n];
		int blocks = 0;
		for (int i = 0; i < n; i++) {
			sums[blocks] = values[i] * weights[i];
			weight[blocks] = weights[i];
			ends[blocks] = i + 1;
			while (blocks > 0 && sums[blocks - 1] / weight[blocks - 1] >= sums[blocks] / weight[blocks]) {
				sums[blocks - 1] += sums[blocks];
				weight[blocks - 1] += weight[blocks];
				ends[blocks - 1] = ends[blocks];
				blocks--;
			}
			blocks++;
		}
		double[] fit = new double[n];
		int at = 0;
		for (int block = 0; block < blocks; block++) {
			double mean = sums[block] / weight[block];
			while (at < ends[block]) {
				fit[at++] = mean;
			}
		}
		return fit;
	}
}
