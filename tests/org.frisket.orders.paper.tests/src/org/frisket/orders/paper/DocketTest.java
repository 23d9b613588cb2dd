package org.frisket.orders.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Stage;
import org.frisket.page.flow.Figures;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The docket as poppler, zbar and qpdf see it, which are no part of this project. */
class DocketTest {

	private static Locale usual;
	private static JobWork tags;

	@TempDir
	private Path folder;

	@BeforeAll
	static void workTheTags() {
		usual = Locale.getDefault();
		Locale.setDefault(Locale.ENGLISH);
		tags = SamplePapers.work(SamplePapers.tags());
	}

	@AfterAll
	static void giveTheLanguageBack() {
		Locale.setDefault(usual);
	}

	private static byte[] docket(JobWork work) throws Exception {
		return SamplePapers.bytes(out -> Docket.write(work, SamplePapers.A4, out));
	}

	private static void assertSays(String text, String... words) {
		for (String word : words) {
			assertTrue(text.contains(word), word + " in " + text);
		}
	}

	@Test
	void everyFactStandsOnOnePage() throws Exception {
		byte[] pdf = docket(tags);
		SamplePapers.check(pdf, folder);
		String text = SamplePapers.words(pdf, folder);
		assertSays(text, "10247", "Gift tags for the harbour fair", "Tern Bookshop", "Monday, March 1, 2027", "Approved",
				"page 1 of 1", "Harbour blue 216 g · Harbour blue", "Tag 80 × 50 mm 1 12");
		assertSays(text, "Sheet 1", "Sheet 2", "300 × 200 mm", "parts: 6, used: 40 %", "Thread them with blue ribbon.",
				"Call before delivery.", "Feb 10, 2027 · Ottoline", "Feb 11, 2027 · Tern Bookshop", "Printed", "Delivered");
		DocketFacts facts = DocketFacts.of(tags, SamplePapers.A4);
		assertEquals(2, facts.work().size(), "drawn, then cut; both sheets alike");
		for (DocketFacts.Work work : facts.work()) {
			assertEquals(List.of("Sheet 1", "Sheet 2"), work.places());
			assertSays(text, work.operation() + " with " + work.tool(), work.settings());
		}
		assertSays(text, Figures.time(facts.seconds()));
		assertFalse(facts.cautions().isEmpty(), "a blade is always something to mind");
		facts.cautions().forEach(caution -> assertSays(text, caution));
	}

	@Test
	void anIndependentReaderReadsTheCode() throws Exception {
		Path picture = SamplePapers.pictures(docket(tags), 150, folder).get(0);
		String read = new String(SamplePapers.ask(0, "zbarimg", "--nodbus", "--quiet", "--raw", picture.toString()), StandardCharsets.UTF_8);
		assertEquals("frisket:job:10247", read.strip());
		assertEquals(10247, JobCode.number(read).orElseThrow());
	}

	@Test
	void orderWithoutADesignPrintsWhatIsKnown() throws Exception {
		Job job = Jobs.create("banner", "Ferry banner");
		job.setNumber("9");
		byte[] pdf = docket(SamplePapers.work(job));
		SamplePapers.check(pdf, folder);
		assertSays(SamplePapers.words(pdf, folder), "Ferry banner", "Customer not known", "Due not known", "Enquiry",
				"Nothing is designed yet.");
		Path picture = SamplePapers.pictures(pdf, 150, folder).get(0);
		assertEquals("frisket:job:9", new String(SamplePapers.ask(0, "zbarimg", "--nodbus", "--quiet", "--raw", picture.toString()),
				StandardCharsets.UTF_8).strip());
	}

	@Test
	void alikePartsAreCountedAndOthersAreNot() {
		Job job = Jobs.create("cards", "Place cards");
		job.setQuantity(5);
		for (int i = 0; i < 3; i++) {
			SamplePapers.outline(job, "Ivory", "#fffff0", "ivory", "Card", "M%d 0h40v20h-40z".formatted(60 * i));
		}
		SamplePapers.outline(job, "Ivory", "#fffff0", "ivory", "Card", "M300 0h40v30h-40z");
		SamplePapers.outline(job, "Grey", "#888888", "ivory", "Card", "M400 0h40v20h-40z");
		List<DocketFacts.Part> parts = DocketFacts.of(SamplePapers.work(job), SamplePapers.A4).parts();
		assertEquals(List.of(3, 1, 1), parts.stream().map(DocketFacts.Part::each).toList());
		assertEquals(List.of(15, 5, 5), parts.stream().map(DocketFacts.Part::all).toList());
		assertEquals(List.of("Ivory", "Ivory", "Grey"), parts.stream().map(DocketFacts.Part::colour).toList());
	}

	@Test
	void findingsThatAreAlikeAreSaidOnceWithTheirNumber() {
		Job job = SamplePapers.tags();
		job.getSheets().get(0).getPlacements().forEach(placement -> placement.setX(20));
		DocketFacts facts = DocketFacts.of(SamplePapers.work(job), SamplePapers.A4);
		List<String> over = facts.blocking().stream().filter(text -> text.contains("Such places: ")).toList();
		assertFalse(over.isEmpty(), facts.blocking().toString());
		assertTrue(facts.blocking().size() < 4, facts.blocking().toString());
		assertEquals(facts.cautions().size(), facts.cautions().stream().distinct().count());
		String last = facts.cautions().get(facts.cautions().size() - 1);
		assertTrue(last.contains("manual"), last);
	}

	@Test
	void oneCopyOnTheBenchIsRunOnceForEachOfTheQuantity() {
		Job job = SamplePapers.tags();
		job.getSheets().clear();
		double twelve = DocketFacts.of(SamplePapers.work(job), SamplePapers.A4).seconds();
		job.setQuantity(1);
		assertEquals(12 * DocketFacts.of(SamplePapers.work(job), SamplePapers.A4).seconds(), twelve, 1e-6);
	}

	@Test
	void signatureOfAStageThatWasTakenBackIsEmpty() {
		Job job = SamplePapers.tags();
		job.setStage(Stage.DESIGNED);
		List<DocketFacts.Signed> signed = DocketFacts.of(SamplePapers.work(job), SamplePapers.A4).signed();
		assertEquals(Optional.of(LocalDate.of(2027, 2, 10)), signed.get(0).day());
		assertEquals(Optional.empty(), signed.get(1).day(), "it is not approved any more");
		job.setStage(Stage.ON_HOLD);
		assertEquals(Optional.of(LocalDate.of(2027, 2, 11)),
				DocketFacts.of(SamplePapers.work(job), SamplePapers.A4).signed().get(1).day());
	}

	@Test
	void longListsGoOnOverPages() throws Exception {
		Job job = Jobs.create("letters", "Shop-window alphabet");
		job.setNumber("77");
		for (int i = 0; i < 90; i++) {
			SamplePapers.outline(job, "Ivory", "#fffff0", "ivory", "Letter " + i, "M%d 0h30v%dh-30z".formatted(40 * i, 20 + i));
		}
		byte[] pdf = docket(SamplePapers.work(job));
		SamplePapers.check(pdf, folder);
		String[] pages = SamplePapers.text(pdf, folder).split("\f");
		assertTrue(pages.length > 1);
		for (int i = 0; i < pages.length; i++) {
			assertSays(pages[i], "page " + (i + 1) + " of " + pages.length, "77");
		}
		assertSays(String.join("", pages), "Letter 0", "Letter 45", "Letter 89");
	}

	@Test
	void sameJobMakesTheSameBytes() throws Exception {
		assertArrayEquals(docket(tags), docket(SamplePapers.work(SamplePapers.tags())));
	}
}
