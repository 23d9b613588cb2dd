package org.frisket.cli.print;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.work.Preparation;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.model.MarkKind;
import org.frisket.model.Sheet;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkDesign;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.output.SheetMarks;
import org.frisket.print.register.RegisterException;

/** The marks that somebody means: those that a sheet of a job keeps, or the usual ones at given places. */
final class MarkedSheet {

	private MarkedSheet() {
	}

	/** @param named a .frjob file, with # and the number or the id of a sheet unless it is the first */
	static MarkPlan ofJob(String named) throws Refusal {
		int hash = named.lastIndexOf('#');
		Job job = Preparation.load(Path.of(hash < 0 ? named : named.substring(0, hash)));
		String which = hash < 0 ? "1" : named.substring(hash + 1);
		List<Sheet> sheets = job.getSheets();
		Sheet sheet = null;
		for (int i = 0; i < sheets.size(); i++) {
			if (which.equals(sheets.get(i).getId()) || which.equals(Integer.toString(i + 1))) {
				sheet = sheets.get(i);
			}
		}
		if (sheet == null) {
			throw new Refusal("--sheet: the job has no sheet “" + which + "”; it has " + sheets.size());
		}
		try {
			return SheetMarks.plan(sheet).orElseThrow(
					() -> new Refusal("--sheet: the sheet keeps no marks; frisket print-and-cut --keep-marks proposes and keeps some"));
		} catch (RegisterException e) {
			throw new Refusal("--sheet: " + e.getMessage());
		}
	}

	/** Discs, but for the first, which is a pennant, as {@code print-and-cut} proposes them; as far from every edge. */
	static MarkPlan usual(List<Point> places) throws Refusal {
		List<Mark> marks = new ArrayList<>();
		double right = 0;
		double low = 0;
		double left = Double.POSITIVE_INFINITY;
		double top = Double.POSITIVE_INFINITY;
		for (Point place : places) {
			MarkDesign design = marks.isEmpty() ? MarkDesign.USUAL.as(MarkKind.PENNANT) : MarkDesign.USUAL;
			marks.add(new Mark(design, place, 0));
			right = Math.max(right, place.x());
			low = Math.max(low, place.y());
			left = Math.min(left, place.x());
			top = Math.min(top, place.y());
		}
		try {
			return new MarkPlan(right + left, low + top, 0, marks);
		} catch (IllegalArgumentException e) {
			throw new Refusal("--design: " + e.getMessage());
		}
	}
}
