package org.frisket.material.calibration;

/**
 * A tip that is dragged behind its swivel axis at a fixed distance: the tractrix problem. Derived for this program and
 * checked by numeric integration; the circle relation is also known from public forums. Lengths in mm, angles in degrees.
 */
public final class BladeGeometry {

	private BladeGeometry() {
	}

	/** Radius on which the axis has to run for the tip to cut a circle. */
	public static double axisRadius(double tipRadius, double offset) {
		return Math.hypot(tipRadius, offset);
	}

	/** How far the axis runs ahead of the tip round the circle it cuts. */
	public static double axisLead(double tipRadius, double offset) {
		return Math.toDegrees(Math.atan2(offset, tipRadius));
	}

	/**
	 * Radius the tip settles on while the axis runs round a circle.
	 *
	 * @param axisRadius above the offset
	 */
	public static double tipRadius(double axisRadius, double offset) {
		return Math.sqrt(axisRadius * axisRadius - offset * offset);
	}

	/** How far the tip has still to go along a straight line until it trails within an angle. */
	public static double lag(double fromAngle, double toAngle, double offset) {
		return offset * Math.log(Math.tan(Math.toRadians(fromAngle) / 2) / Math.tan(Math.toRadians(toAngle) / 2));
	}

	/** How far the top of a thick stock is cut ahead of the tip, by an edge at an angle to the sheet. */
	public static double overrun(double thickness, double edgeAngle) {
		return thickness / Math.tan(Math.toRadians(edgeAngle));
	}

	/** Length of the way of the axis round a convex outline. */
	public static double convexAxisLength(double tipLength, double offset) {
		return tipLength + 2 * Math.PI * offset;
	}
}
