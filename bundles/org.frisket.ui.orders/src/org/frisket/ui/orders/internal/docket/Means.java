package org.frisket.ui.orders.internal.docket;

import java.io.IOException;
import java.time.ZoneId;

import org.frisket.orders.paper.BookPapers;
import org.frisket.orders.paper.JobWork;
import org.frisket.orders.paper.PaperForm;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.layout.Paper;
import org.frisket.studio.Studio;
import org.frisket.ui.LengthUnit;

/**
 * What papers are worked out by on this screen. Off the UI thread only.
 *
 * @param papers of the studio
 * @param work   how they are worked out
 */
record Means(BookPapers papers, JobWork.Means work) {

	/** Remembers what jobs came to, so that one that is looked at again is there at once. */
	private static final JobPreparer PREPARER = new JobPreparer(FontLibraries.installed());

	/** @throws IOException if the studio's store or preferences cannot be read */
	static Means now() throws IOException {
		BookPapers papers = ofStudio();
		return new Means(papers, papers.means());
	}

	static BookPapers ofStudio() {
		return new BookPapers(Studio.folder(), PREPARER, LayerLimits.byStock(StockLimits.ofStudio()));
	}

	/** As the screen writes lengths; the paper that goes with them. */
	static PaperForm form() {
		boolean inches = LengthUnit.shown() == LengthUnit.INCH;
		return new PaperForm(inches ? Paper.LETTER : Paper.A4, inches, ZoneId.systemDefault());
	}
}
