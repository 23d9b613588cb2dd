package org.frisket.print.marks;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;

/**
 * The marks of a sheet, in mm from its top left, y down.
 *
 * @param width  of the sheet @param height of it
 * @param margin that the printer leaves bare on every side
 * @param marks  at least three
 */
public record MarkPlan(double width, double height, double margin, List<Mark> marks) {

	/** Fewer do not show whether a sheet is stretched. */
	public static final int LEAST_MARKS = 3;
	/** More are no help, and what the search for them is made for. */
	public static final int MOST_MARKS = 12;

	/** @throws IllegalArgumentException with a sentence, for too few or too many marks or a sheet without extent */
	public MarkPlan {
		marks = List.copyOf(marks);
		if (marks.size() < LEAST_MARKS || marks.size() > MOST_MARKS) {
			throw new IllegalArgumentException(NLS.bind(Messages.MarkPlan_count, new Object[] { LEAST_MARKS, MOST_MARKS, marks.size() }));
		}
		if (!(width > 2 * margin) || !(height > 2 * margin) || !(margin >= 0)) {
			throw new IllegalArgumentException(Messages.MarkPlan_sheet);
		}
	}

	/** Where the marks are. */
	public List<Point> places() {
		return marks.stream().map(Mark::place).toList();
	}

	/** Where something can be printed. */
	public Bounds printable() {
		return new Bounds(margin, margin, width - margin, height - margin);
	}
}
