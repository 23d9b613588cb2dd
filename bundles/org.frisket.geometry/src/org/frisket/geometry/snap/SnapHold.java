package org.frisket.geometry.snap;

/**
 * What holds on one axis.
 *
 * @param shift by how much the moved thing has to go along the axis to be held, in mm
 * @param line  what holds it; for a node a line without length
 */
public record SnapHold(double shift, SnapLine line) {

	public SnapKind kind() {
		return line.kind();
	}
}
