package org.frisket.geometry.nodes;

import org.frisket.geometry.Point;

/** How the handles of a node hang together. */
public enum NodeKind {

	/** Each handle goes its own way; also every node with a straight line on one side. */
	CORNER,
	/** The handles lie on one line through the node, so that the curve has no kink. */
	SMOOTH,
	/** Smooth, with handles of one length. */
	SYMMETRIC;

	/** Sine of the angle, and share of the length, that rounding in files may spoil. */
	private static final double ROUNDING = 1e-3;

	/** What two handles look like; path data does not say what was meant. */
	static NodeKind of(Point place, Point in, Point out) {
		if (in == null || out == null) {
			return CORNER;
		}
		Point back = in.minus(place);
		Point ahead = out.minus(place);
		double lengths = back.length() * ahead.length();
		if (lengths == 0 || back.dot(ahead) >= 0 || Math.abs(back.cross(ahead)) > ROUNDING * lengths) {
			return CORNER;
		}
		double difference = Math.abs(back.length() - ahead.length());
		return difference <= ROUNDING * Math.max(back.length(), ahead.length()) ? SYMMETRIC : SMOOTH;
	}
}
