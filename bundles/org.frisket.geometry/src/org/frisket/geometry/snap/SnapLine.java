package org.frisket.geometry.snap;

/**
 * A line that holds, parallel to one axis: a guide, the edge of something, a line through its centre.
 *
 * @param at   its place on the other axis, in mm
 * @param kind what it is
 * @param from where what it belongs to begins along the line, in mm; negative infinity for an endless line
 * @param to   where it ends; infinity for an endless line
 */
public record SnapLine(double at, SnapKind kind, double from, double to) {

	/** A line without ends. */
	public static SnapLine endless(double at, SnapKind kind) {
		return new SnapLine(at, kind, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
	}

	/** This line and another one at the same place as one. */
	SnapLine with(SnapLine other) {
		return new SnapLine(at, kind, Math.min(from, other.from), Math.max(to, other.to));
	}
}
