package org.frisket.orders.paper;

import java.time.ZoneId;
import java.util.Objects;

import org.frisket.page.flow.Figures;
import org.frisket.prepare.layout.Paper;

/**
 * How papers are written.
 *
 * @param inches whether lengths are in inches
 * @param zone   in which the days of stage changes are told
 */
public record PaperForm(Paper paper, boolean inches, ZoneId zone) {

	public PaperForm {
		Objects.requireNonNull(paper);
		Objects.requireNonNull(zone);
	}

	Figures figures() {
		return new Figures(inches);
	}
}
