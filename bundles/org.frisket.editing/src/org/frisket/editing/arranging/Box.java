package org.frisket.editing.arranging;

/** How far an element reaches on the bench, in mm, y down. Edits are told it, for they know no geometry. */
public record Box(double minX, double minY, double maxX, double maxY) {

	/** @throws IllegalArgumentException unless all is finite and in order */
	public Box {
		if (!(maxX >= minX && maxY >= minY) || !Double.isFinite(maxX - minX) || !Double.isFinite(maxY - minY)) {
			throw new IllegalArgumentException("no box: " + minX + " " + minY + " " + maxX + " " + maxY);
		}
	}

	public double width() {
		return maxX - minX;
	}

	public double height() {
		return maxY - minY;
	}

	/** The smallest box around both. */
	public Box with(Box other) {
		return new Box(Math.min(minX, other.minX), Math.min(minY, other.minY), Math.max(maxX, other.maxX),
				Math.max(maxY, other.maxY));
	}
}
