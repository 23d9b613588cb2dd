package org.frisket.geometry.axis;

import java.util.List;

/**
 * A stretch of a medial axis in which nothing forks.
 *
 * @param points at least two; a ring does not repeat the first one at the end
 * @param ring   whether it runs back to where it began
 */
public record AxisBranch(List<AxisPoint> points, boolean ring) {

	public AxisBranch {
		points = List.copyOf(points);
	}

	/** In mm. */
	public double length() {
		double length = ring ? points.get(points.size() - 1).place().distance(points.get(0).place()) : 0;
		for (int i = 1; i < points.size(); i++) {
			length += points.get(i - 1).place().distance(points.get(i).place());
		}
		return length;
	}
}
