package org.frisket.print.register;

/**
 * Small dense systems with at least as many equations as unknowns, by Householder reflections (Golub and Van Loan, Matrix
 * Computations, chapter 5; from memory).
 */
final class LeastSquares {

	/** Of the largest of a column; below it a pivot is what rounding left. */
	private static final double ROUNDING = 1e-12;

	private LeastSquares() {
	}

	/**
	 * The unknowns with the least sum of squared errors.
	 *
	 * @throws ArithmeticException if the equations leave some of them open
	 */
	static double[] solve(double[][] matrix, double[] right) {
		double[][] a = copy(matrix);
		double[] b = right.clone();
		int unknowns = a[0].length;
		double[] scale = normalise(a);
		double[] diagonal = new double[unknowns];
		for (int k = 0; k < unknowns; k++) {
			diagonal[k] = reflect(a, b, k);
			if (!(Math.abs(diagonal[k]) > ROUNDING)) {
				throw new ArithmeticException("unknown " + k + " is left open");
			}
		}
		double[] x = new double[unknowns];
		for (int k = unknowns - 1; k >= 0; k--) {
			double sum = b[k];
			for (int j = k + 1; j < unknowns; j++) {
				sum -= a[k][j] * x[j];
			}
			x[k] = sum / diagonal[k];
		}
		for (int k = 0; k < unknowns; k++) {
			x[k] /= scale[k];
		}
		return x;
	}

	private static double[][] copy(double[][] matrix) {
		double[][] a = new double[matrix.length][];
		for (int i = 0; i < a.length; i++) {
			a[i] = matrix[i].clone();
		}
		return a;
	}

	/** Brings every column to length 1; answers the lengths. */
	private static double[] normalise(double[][] a) {
		double[] scale = new double[a[0].length];
		for (int k = 0; k < scale.length; k++) {
			double sum = 0;
			for (double[] row : a) {
				sum += row[k] * row[k];
			}
			scale[k] = sum == 0 ? 1 : Math.sqrt(sum);
			for (double[] row : a) {
				row[k] /= scale[k];
			}
		}
		return scale;
	}

	/** Turns column k onto the axis; its length there is answered. Below the diagonal rubbish is left. */
	private static double reflect(double[][] a, double[] b, int k) {
		double norm = 0;
		for (int i = k; i < a.length; i++) {
			norm += a[i][k] * a[i][k];
		}
		double alpha = -Math.copySign(Math.sqrt(norm), a[k][k]);
		double[] v = new double[a.length];
		double square = 0;
		for (int i = k; i < a.length; i++) {
			v[i] = a[i][k] - (i == k ? alpha : 0);
			square += v[i] * v[i];
		}
		if (square == 0) {
			return alpha;
		}
		for (int j = k + 1; j < a[0].length; j++) {
			double dot = 0;
			for (int i = k; i < a.length; i++) {
				dot += v[i] * a[i][j];
			}
			for (int i = k; i < a.length; i++) {
				a[i][j] -= 2 * dot / square * v[i];
			}
		}
		double dot = 0;
		for (int i = k; i < a.length; i++) {
			dot += v[i] * b[i];
		}
		for (int i = k; i < a.length; i++) {
			b[i] -= 2 * dot / square * v[i];
		}
		return alpha;
	}

	/**
	 * The inverse of the matrix times its transpose's normal form, {@code (AᵀA)⁻¹}: times the variance of one equation, the
	 * covariance of the unknowns.
	 */
	static double[][] covariance(double[][] matrix) {
		double[][] a = copy(matrix);
		double[] scale = normalise(a);
		int n = scale.length;
		double[][] normal = new double[n][2 * n];
		for (int i = 0; i < n; i++) {
			for (int j = 0; j < n; j++) {
				for (double[] row : a) {
					normal[i][j] += row[i] * row[j];
				}
			}
			normal[i][n + i] = 1;
		}
		eliminate(normal, n);
		double[][] inverse = new double[n][n];
		for (int i = 0; i < n; i++) {
			for (int j = 0; j < n; j++) {
				inverse[i][j] = normal[i][n + j] / scale[i] / scale[j];
			}
		}
		return inverse;
	}

	private static void eliminate(double[][] rows, int n) {
		for (int k = 0; k < n; k++) {
			int pivot = k;
			for (int i = k + 1; i < n; i++) {
				pivot = Math.abs(rows[i][k]) > Math.abs(rows[pivot][k]) ? i : pivot;
			}
			double[] row = rows[pivot];
			rows[pivot] = rows[k];
			rows[k] = row;
			double by = row[k];
			for (int j = 0; j < row.length; j++) {
				row[j] /= by;
			}
			for (int i = 0; i < n; i++) {
				double factor = rows[i][k];
				for (int j = 0; i != k && j < row.length; j++) {
					rows[i][j] -= factor * row[j];
				}
			}
		}
	}

	/** How many columns are independent, a share of the largest pivot being taken for nothing. */
	static int rank(double[][] matrix, double nothing) {
		double[][] a = copy(matrix);
		int rank = 0;
		double first = 0;
		while (rank < a.length && rank < a[0].length) {
			int row = rank;
			int column = rank;
			for (int i = rank; i < a.length; i++) {
				for (int j = rank; j < a[0].length; j++) {
					if (Math.abs(a[i][j]) > Math.abs(a[row][column])) {
						row = i;
						column = j;
					}
				}
			}
			double pivot = Math.abs(a[row][column]);
			first = rank == 0 ? pivot : first;
			if (!(pivot > nothing * first)) {
				return rank;
			}
			swap(a, rank, row, column);
			for (int i = rank + 1; i < a.length; i++) {
				double factor = a[i][rank] / a[rank][rank];
				for (int j = rank; j < a[0].length; j++) {
					a[i][j] -= factor * a[rank][j];
				}
			}
			rank++;
		}
		return rank;
	}

	private static void swap(double[][] a, int to, int row, int column) {
		double[] line = a[row];
		a[row] = a[to];
		a[to] = line;
		for (double[] each : a) {
			double value = each[column];
			each[column] = each[to];
			each[to] = value;
		}
	}
}
