package org.frisket.imports.dxf;

import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;

/**
 * Segments of polylines. A bulge is the tangent of a quarter of the angle that the arc turns through, positive if it
 * turns counter-clockwise where y points up; 0 is a straight line.
 */
final class Bulges {

	/** An arc flatter than this is a straight line to any machine. */
	private static final double LEAST = 1e-9;

	private Bulges() {
	}

	static void add(OutlineBuilder builder, Point from, double bulge, Point to) {
		double chord = from.distance(to);
		if (Math.abs(bulge) < LEAST || chord == 0) {
			builder.lineTo(to);
			return;
		}
		double radius = chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
		// angles grow from x towards y, which is counter-clockwise where y points up, as here
		builder.arcTo(radius, radius, 0, Math.abs(bulge) > 1, bulge > 0, to);
	}
}
