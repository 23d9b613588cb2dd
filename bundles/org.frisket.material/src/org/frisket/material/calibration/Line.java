package org.frisket.material.calibration;

/**
 * The straight line of least squares through points.
 *
 * @param slope  of the line
 * @param meanX  of the points
 * @param meanY  of the points
 * @param spread sum of squared distances of x from its mean
 * @param sigma  scatter of y about the line, with n - 2 degrees of freedom; NaN for two points
 * @param points number of them
 */
record Line(double slope, double meanX, double meanY, double spread, double sigma, int points) {

	/** @param x at least two different values */
	static Line through(double[] x, double[] y) {
		int n = x.length;
		double meanX = 0;
		double meanY = 0;
		for (int i = 0; i < n; i++) {
			meanX += x[i] / n;
			meanY += y[i] / n;
		}
		double spread = 0;
		double product = 0;
		for (int i = 0; i < n; i++) {
			spread += (x[i] - meanX) * (x[i] - meanX);
			product += (x[i] - meanX) * (y[i] - meanY);
		}
		double slope = product / spread;
		double squares = 0;
		for (int i = 0; i < n; i++) {
			double rest = y[i] - meanY - slope * (x[i] - meanX);
			squares += rest * rest;
		}
		return new Line(slope, meanX, meanY, spread, n > 2 ? Math.sqrt(squares / (n - 2)) : Double.NaN, n);
	}

	double root() {
		return meanX - meanY / slope;
	}

	/**
	 * Standard error of the root, to first order: sigma / |slope| · sqrt(1/n + (root - mean x)² / spread). The classical
	 * calibration, for instance in Draper and Smith, Applied Regression Analysis (from memory), without the term of a new
	 * reading.
	 */
	double rootError() {
		double away = root() - meanX;
		return sigma / Math.abs(slope) * Math.sqrt(1.0 / points + away * away / spread);
	}

	double squares() {
		return points > 2 ? sigma * sigma * (points - 2) : 0;
	}
}
