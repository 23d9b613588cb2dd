package org.frisket.print.output;

import org.frisket.geometry.Transform;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkPlan;

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

	/** The marks as they are printed on the back, each with the number of the one that it stands behind. */
	public MarkPlan over(MarkPlan plan) {
		Transform over = over(plan.width(), plan.height());
		// a mirror goes before a turn only if the turn goes the other way round
		return new MarkPlan(plan.width(), plan.height(), plan.margin(), plan.marks().stream()
				.map(mark -> new Mark(mark.design(), over.apply(mark.place()), (this == SIDE ? 0 : Math.PI) - mark.turn(),
						!mark.mirrored()))
				.toList());
	}

	/** Whether that is the longer edge of such a sheet, by which printers name how they turn paper; of a square any is. */
	public boolean isLongEdge(double width, double height) {
		return width == height || this == SIDE == height > width;
	}
}
