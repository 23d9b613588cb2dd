package org.frisket.run.paper;

import java.util.Objects;
import java.util.Optional;

import org.frisket.model.Sheet;
import org.frisket.prepare.layout.Paper;

/**
 * How a run sheet is written.
 *
 * @param sheet  that is worked; empty for a job as it lies on the bench
 * @param stock  what it is made of, as people call it; empty if nobody said so
 * @param paper  it is printed on
 * @param inches whether lengths are in inches
 */
public record RunSheetForm(Optional<Sheet> sheet, String stock, Paper paper, boolean inches) {

	public RunSheetForm {
		Objects.requireNonNull(sheet);
		Objects.requireNonNull(stock);
		Objects.requireNonNull(paper);
	}

	/** On A4 in mm. */
	public static RunSheetForm of(Optional<Sheet> sheet) {
		return new RunSheetForm(sheet, sheet.map(Sheet::getStock).orElse(""), Paper.A4, false);
	}
}
