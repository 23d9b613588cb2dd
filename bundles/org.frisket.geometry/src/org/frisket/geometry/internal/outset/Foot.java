package org.frisket.geometry.internal.outset;

/** What a rim keeps its distance from: a segment of the shape, or a corner of it. It has a parameter of its own. */
interface Foot {

	/**
	 * The place that lies at a distance to the left (y up) of the direction of travel, and its derivative.
	 *
	 * @param place is given x, y and their derivatives by t
	 */
	void at(double t, double distance, double[] place);

	/**
	 * Whether the rim runs the same way as the foot: it does not beyond the centres of the foot's curvature, where no
	 * place has its nearest one on the foot.
	 *
	 * @return 1 for a straight foot; less than 0 beyond the centre
	 */
	double stretching(double t, double distance);

	/** Whether {@link #stretching} is the same all along. */
	boolean isEven();
}
