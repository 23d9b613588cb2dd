package org.frisket.toolpath.motion;

/**
 * How a machine moves.
 *
 * @param speed        in mm/s, positive
 * @param acceleration in mm/s², positive
 * @param deviation    in mm, 0 or more: how far the carriage may be thought to cut a corner; 0 stops at each
 */
public record Drive(double speed, double acceleration, double deviation) {

	/** @throws IllegalArgumentException for what cannot move */
	public Drive {
		if (!(speed > 0) || !(acceleration > 0) || !(deviation >= 0)) {
			throw new IllegalArgumentException(
					"speed " + speed + " mm/s, acceleration " + acceleration + " mm/s\u00b2, deviation " + deviation + " mm");
		}
	}

	/** The same with another speed. */
	public Drive at(double other) {
		return new Drive(other, acceleration, deviation);
	}

	/**
	 * How fast a corner may be passed: as on a circle that stays within the deviation of it. With the angle inside the
	 * corner, R = δ sin(θ/2) / (1 - sin(θ/2)) and v = √(a R).
	 *
	 * @param turn by how much the heading turns, in radians; 0 is straight on
	 * @return in mm/s, infinite straight on, 0 for a reversal
	 */
	public double cornerSpeed(double turn) {
		// the sine of half the inside angle is the cosine of half the turn
		double half = Math.cos(Math.min(Math.PI, Math.abs(turn)) / 2);
		if (half >= 1) {
			return Double.POSITIVE_INFINITY;
		}
		return Math.sqrt(acceleration * deviation * Math.max(0, half) / (1 - half));
	}

	/** How fast a curve may be followed, v = √(a / κ), in mm/s. @param curvature in 1/mm */
	public double curveSpeed(double curvature) {
		return curvature == 0 ? Double.POSITIVE_INFINITY : Math.sqrt(acceleration / Math.abs(curvature));
	}
}
