package org.frisket.cli.print;

import java.nio.file.Path;

import org.frisket.cli.line.Refusal;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.output.SheetMarks;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.Registration;

/**
 * What is said of the marks on a side of a printed sheet: where each was measured, or a scan in which they are looked for.
 *
 * @param typed  option of the places
 * @param places null if they are not said
 * @param seen   option of the scan
 * @param scan   null if there is none
 */
record MeasuredSide(String typed, MarkText.Places places, String seen, Path scan) {

	/** @throws Refusal if both are said */
	void check() throws Refusal {
		if (places != null && scan != null) {
			throw new Refusal(typed + " and " + seen + " say the same thing: give one of them");
		}
	}

	boolean isSaid() {
		return places != null || scan != null;
	}

	/** Which option says it, as the beginning of a refusal; empty if none does. */
	String what() {
		return places != null ? typed + ": " : scan != null ? seen + ": " : "";
	}

	/** @param plan as it is seen on this side @param dpi of the scan; null to take what its file says */
	Registration fit(MarkPlan plan, FitKind kind, Double dpi) throws RegisterException, Refusal {
		return scan != null ? SheetMarks.sound(ScanFile.of(seen, scan, dpi, plan).registration(kind))
				: SheetMarks.measured(plan, kind, places.points());
	}
}
