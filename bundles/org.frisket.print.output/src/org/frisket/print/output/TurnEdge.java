package org.frisket.print.output;

import org.frisket.geometry.Transform;

/** Over which edge a sheet is turned to print or work its back. */
public enum TurnEdge {

	/** Over its left or right edge, like a page of a book. */
	SIDE,
	/** Over its upper or lower edge, like a page of a pad. */
	HEAD;

	/** From a sheet seen from the front to the same sheet turned over; its own inverse. */
	public Transform over(double width, double height) {
		return this == SIDE ? new Transform(-1, 0, 0, 1, width, 0) : new Transform(1, 0, 0, -1, 0, height);
	}

	/** Whether that is the longer edge of such a sheet, by which printers name how they turn paper; of a square any is. */
	public boolean isLongEdge(double width, double height) {
		return width == height || this == SIDE == height > width;
	}
}
