package org.frisket.orders.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.orders.OrderBook;
import org.frisket.orders.Paper;
import org.frisket.orders.PaperKind;
import org.frisket.page.flow.Figures;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.run.Rate;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Papers of jobs in an order book. */
class BookPapersTest {

	@TempDir
	Path folder;

	private StudioFolder studio;
	private BookPapers papers;

	@BeforeEach
	void open() throws Exception {
		studio = new StudioFolder(folder.resolve("studio")).openForWriting();
		papers = new BookPapers(studio, new JobPreparer(FontLibraries.installed()), LayerLimits.same(Limits.CARD));
	}

	private JobWork.Means means() {
		return papers.means(SamplePapers.workshop(), SamplePapers.rate(), Tolerance.DEFAULT);
	}

	@Test
	void guestsAreFoundFromTheStudiosFolder() throws Exception {
		Job guest = Jobs.create("cards", "Place cards");
		SamplePapers.outline(guest, "Harbour blue", SamplePapers.BLUE, "harbour-blue", "Card", "M0 0H60V40H0Z");
		JobFile.save(guest, Files.createDirectories(studio.path().resolve("guests")).resolve("cards.frjob"));
		for (String path : List.of("guests/cards.frjob", studio.path().resolve("guests/cards.frjob").toString())) {
			Job host = SamplePapers.tags();
			Guest invited = FrisketFactory.INSTANCE.createGuest();
			invited.setJob("cards");
			invited.setTitle("Place cards");
			invited.setFile(path);
			host.getGuests().add(invited);
			assertEquals(List.of(), papers.work(host, means(), Monitor.NONE).problems(), path);
		}
	}

	@Test
	void paperThatIsNotWrittenIsNone() throws Exception {
		Job job = SamplePapers.tags();
		long number = new OrderBook(studio).takeIn(job, "Ottoline").number();
		Path file = folder.resolve("docket.pdf");
		IOException failed = assertThrows(IOException.class, () -> BookPapers.write(out -> {
			out.write(new byte[100]);
			throw new IOException("no ink");
		}, file));
		assertEquals("no ink", failed.getMessage());
		assertFalse(Files.exists(file));
		assertEquals(List.of(), new OrderBook(studio).papers(number));
		JobWork work = papers.work(job, means(), Monitor.NONE);
		BookPapers.write(out -> Docket.write(work, SamplePapers.A4, out), file);
		papers.note(number, PaperKind.DOCKET, file, "Ottoline");
		Paper noted = new OrderBook(studio).papers(number).get(0);
		assertEquals(PaperKind.DOCKET, noted.kind());
		assertEquals("docket.pdf", noted.remark());
		assertEquals("Ottoline", noted.person());
	}

	@Test
	void designIsTheSameAsInTheWholeAndSooner() {
		Job job = SamplePapers.tags();
		DocketFacts first = DocketFacts.of(JobWork.designed(job, means(), Monitor.NONE), SamplePapers.A4);
		DocketFacts whole = DocketFacts.of(papers.work(job, means(), Monitor.NONE), SamplePapers.A4);
		assertEquals(whole.parts(), first.parts());
		assertEquals(whole.signed(), first.signed());
		assertEquals(List.of(), first.sheets());
		assertEquals(2, whole.sheets().size());
		assertTrue(whole.seconds() > 0 && first.seconds() == 0);
	}

	@Test
	void otherRateGivesOtherCostsAndNothingElse() {
		JobWork work = SamplePapers.work(SamplePapers.tags());
		JobWork dear = work.at(Optional.of(Rate.parse("72 EUR")));
		assertEquals(DocketFacts.of(work, SamplePapers.A4), DocketFacts.of(dear, SamplePapers.A4));
		assertFalse(work.sheets().get(0).cost().equals(dear.sheets().get(0).cost()));
		assertEquals(work.sheets().get(0).cost(), dear.at(SamplePapers.rate()).sheets().get(0).cost());
	}

	/** A pixel is 1/96 inch, as CSS Values and Units 4 says of the reference pixel; 80 mm are 302.36 of them. */
	@Test
	void pictureOfAJobIsToScale() throws Exception {
		JobWork work = JobWork.designed(SamplePapers.tags(), means(), Monitor.NONE);
		ShownJob whole = ShownJob.of(work.prepared(), 1000, 1000, 1, new Figures(false)).orElseThrow();
		assertEquals(303, whole.image().getWidth());
		assertEquals(189, whole.image().getHeight());
		assertTrue(whole.text().contains("1 : 1"), whole.text());
		assertEquals(0x2a4d8f, whole.image().getRGB(20, 20) & 0xffffff);
		ShownJob half = ShownJob.of(work.prepared(), 151, 1000, 2, new Figures(false)).orElseThrow();
		assertEquals(302, half.image().getWidth(), 1);
		assertTrue(half.text().contains("1 : 2"), half.text());
		assertEquals(Optional.empty(), ShownJob.of(
				JobWork.designed(Jobs.create("none", "Ferry banner"), means(), Monitor.NONE).prepared(), 100, 100, 1, new Figures(false)));
	}
}
