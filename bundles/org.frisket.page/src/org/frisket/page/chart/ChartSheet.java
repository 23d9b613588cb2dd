package org.frisket.page.chart;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

import org.frisket.prepare.layout.Paper;

/**
 * What a chart is put on.
 *
 * @param inches whether lengths are written in inches, otherwise in mm
 * @param date   that is written on each page; empty for none
 */
public record ChartSheet(Paper paper, boolean inches, Optional<LocalDate> date) {

	public ChartSheet {
		Objects.requireNonNull(paper);
		Objects.requireNonNull(date);
	}
}
