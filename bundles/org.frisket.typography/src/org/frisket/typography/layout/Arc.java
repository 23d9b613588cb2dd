package org.frisket.typography.layout;

/**
 * The circle that a text is set on, about the origin.
 *
 * @param radius     of the circle in mm
 * @param direction  in which the text runs to the viewer: with the heads of its letters outwards (clockwise) or inwards
 *                   (counter-clockwise)
 * @param side       on which side of the circle the letters of the first line stand
 * @param startAngle in degrees from the top, clockwise to the viewer: where the text starts, has its middle or ends,
 *                   as its alignment is left, centre or right
 */
public record Arc(double radius, Direction direction, Side side, double startAngle) {

	/** Of reading. */
	public enum Direction {
		CLOCKWISE, COUNTER_CLOCKWISE
	}

	/** On the side where the circle's middle is not, and where it is. */
	public enum Side {
		OUTSIDE, INSIDE
	}

	/** @throws IllegalArgumentException unless the radius is positive and all is finite */
	public Arc {
		if (!(radius > 0) || !Double.isFinite(radius) || !Double.isFinite(startAngle)) {
			throw new IllegalArgumentException("an arc of radius " + radius + " from " + startAngle + "°");
		}
	}

	/** Over the top, or under the bottom of a circle, with its middle there. */
	public static Arc over(double radius) {
		return new Arc(radius, Direction.CLOCKWISE, Side.OUTSIDE, 0);
	}

	/** Within the bottom of a circle, heads inwards. */
	public static Arc within(double radius) {
		return new Arc(radius, Direction.COUNTER_CLOCKWISE, Side.INSIDE, 180);
	}

	/**
	 * Of the first line's baseline in mm: the circle itself if the letters' feet stand on it; else their heads touch
	 * it, and the baseline lies a cap height away.
	 */
	public double baselineRadius(double capHeight) {
		boolean headsOutward = direction == Direction.CLOCKWISE;
		boolean outside = side == Side.OUTSIDE;
		if (headsOutward == outside) {
			return radius;
		}
		return outside ? radius + capHeight : radius - capHeight;
	}
}
