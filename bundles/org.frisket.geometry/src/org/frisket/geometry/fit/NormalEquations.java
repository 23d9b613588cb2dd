package org.frisket.geometry.fit;

/** A small linear least-squares system, gathered row by row. */
final class NormalEquations {

	private final int unknowns;
	private final double[][] matrix;
	private final double[] right;
	private int rows;

	NormalEquations(int unknowns) {
		this.unknowns = unknowns;
		matrix = new double[unknowns][unknowns];
		right = new double[unknowns];
	}

	void add(double[] row, double value) {
		rows++;
		for (int i = 0; i < unknowns; i++) {
			right[i] += row[i] * value;
			for (int j = 0; j <= i; j++) {
				matrix[i][j] += row[i] * row[j];
			}
		}
	}

	/**
	 * By Cholesky's decomposition; uses up the system.
	 *
	 * @param damping how much a row's worth of staying at zero counts, which steadies what the data leave open
	 */
	double[] solve(double damping) {
		for (int i = 0; i < unknowns; i++) {
			matrix[i][i] += damping * rows + Double.MIN_NORMAL;
			for (int j = 0; j <= i; j++) {
				double sum = matrix[i][j];
				for (int k = 0; k < j; k++) {
					sum -= matrix[i][k] * matrix[j][k];
				}
				matrix[i][j] = i == j ? Math.sqrt(Math.max(sum, Double.MIN_NORMAL)) : sum / matrix[j][j];
			}
			for (int k = 0; k < i; k++) {
				right[i] -= matrix[i][k] * right[k];
			}
			right[i] /= matrix[i][i];
		}
		for (int i = unknowns - 1; i >= 0; i--) {
			for (int k = i + 1; k < unknowns; k++) {
				right[i] -= matrix[k][i] * right[k];
			}
			right[i] /= matrix[i][i];
		}
		return right;
	}
}
