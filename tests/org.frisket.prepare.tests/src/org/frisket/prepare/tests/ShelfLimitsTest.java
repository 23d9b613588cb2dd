package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.material.ShelfException;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.material.sizes.Formats;
import org.frisket.material.weights.Thickness;
import org.frisket.model.Job;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.SheetSize;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stock on the studio's shelf tells what makeready allows. */
class ShelfLimitsTest {

	private static final String PEARL = "pearl-300";

	@TempDir
	Path folder;

	private final Locale before = Locale.getDefault();

	@BeforeEach
	void studio() {
		Studio.choose(Optional.of(folder));
	}

	@AfterEach
	void usualStudio() {
		Studio.choose(Optional.empty());
		Locale.setDefault(before);
	}

	private static void shelve(StockFamily family, String mm, String... sizes) throws IOException, ShelfException {
		try (Store store = Store.open(Studio.folder(), StockShelf.AREA)) {
			new StockShelf(store).put(List.of(Stock.named("Pearl").id(PEARL).family(family)
					.caliper(mm == null ? null : new Thickness(new BigDecimal(mm)))
					.sizes(Arrays.stream(sizes).map(Formats::parse).toList()).build()));
		}
	}

	private static Limits pearl() {
		return StockLimits.ofStudio().limits(PEARL).orElseThrow();
	}

	/** Common practice, no source: three times the caliper, 1 mm at least in card and 0.5 mm in all else. */
	@ParameterizedTest
	@CsvSource({ "CARD, 0.3, 1, 2, 0.5, 1.2, 0.25", "CARD, 0.4, 1.2, 2.4, 0.6, 1.6, 0.25", "CARD, 0.5, 1.5, 3, 0.75, 2, 0.5",
			"CARD, 0.05, 1, 2, 0.5, 0.5, 0.25", "PAPER, 0.1, 0.5, 1, 0.25, 0.5, 0.25", "PAPER, 0.2, 0.6, 1.2, 0.3, 0.8, 0.25",
			"FILM, 0.08, 0.5, 1, 0.25, 0.5, 0.25", "FOAM, 2, 6, 12, 3, 2, 0.25", "BOARD, 1, 3, 6, 1.5, 2, 0.25" })
	void caliperGivesTheLimits(StockFamily family, String mm, double stroke, double piece, double gap, double hole,
			double offset) throws Exception {
		shelve(family, mm);
		Limits limits = pearl();
		assertEquals(stroke, limits.thinnestStroke());
		assertEquals(piece, limits.smallestPiece());
		assertEquals(gap, limits.get(Limit.NARROWEST_GAP));
		assertEquals(hole, limits.smallestHole());
		assertEquals(offset, limits.get(Limit.BLADE_OFFSET));
	}

	/** The built-in families are the same rule. */
	@Test
	void cardOnTheShelfIsAsBuiltIn() throws Exception {
		shelve(StockFamily.CARD, "0.3");
		assertEquals(Limits.CARD, pearl());
		shelve(StockFamily.CARD, "0.5");
		assertEquals(StockLimits.BUILT_IN.limits("heavy-card"), Optional.of(pearl()));
	}

	@Test
	void caliperIsEstimatedFromTheGrammage() throws Exception {
		try (Store store = Store.open(Studio.folder(), StockShelf.AREA)) {
			new StockShelf(store).add(Stock.named("Pearl").id(PEARL).family(StockFamily.CARD).grammage(new BigDecimal(400)).build());
		}
		double caliper = Stock.named("Pearl").family(StockFamily.CARD).grammage(new BigDecimal(400)).build().caliper()
				.orElseThrow().thickness().mm().doubleValue();
		assertEquals(3 * caliper, pearl().thinnestStroke(), 1e-9);
		Locale.setDefault(Locale.ROOT);
		assertTrue(StockLimits.ofStudio().basis(PEARL).orElseThrow().contains("estimated"));
	}

	@Test
	void commonPracticeIsMarked() throws Exception {
		shelve(StockFamily.CARD, "0.32");
		Locale.setDefault(Locale.ROOT);
		String basis = StockLimits.ofStudio().basis(PEARL).orElseThrow();
		assertTrue(basis.contains("Pearl") && basis.contains("0.32 mm"), basis);
		assertEquals(Optional.empty(), StockLimits.ofStudio().basis("card"));
		Files.writeString(folder.resolve("limits.properties"), PEARL + ".thinnest-stroke = 0.9 mm");
		assertEquals(Optional.empty(), StockLimits.ofStudio().basis(PEARL), "the studio wrote it down");
	}

	@Test
	void theStudiosFilePrevails() throws Exception {
		shelve(StockFamily.CARD, "0.4", "A4");
		Files.write(folder.resolve("limits.properties"), List.of(PEARL + ".thinnest-stroke = 0.9 mm", "all.node-step = 0.1 mm"));
		assertEquals(0.9, pearl().thinnestStroke());
		assertEquals(1.6, pearl().smallestHole(), "what the file does not say");
		assertEquals(0.1, pearl().get(Limit.NODE_STEP));
		assertEquals(List.of("card", "heavy-card", "paper", "film", PEARL), StockLimits.ofStudio().stocks());
		assertEquals(List.of(SheetSize.of(297, 210)), StockLimits.ofStudio().sheets(PEARL));
		Files.write(folder.resolve("limits.properties"), List.of(PEARL + ".sheet-width = 100 mm", PEARL + ".sheet-height = 90 mm"));
		assertEquals(List.of(SheetSize.of(90, 100)), StockLimits.ofStudio().sheets(PEARL));
	}

	@Test
	void changesOfTheShelfAreSeen() throws Exception {
		assertEquals(Optional.empty(), StockLimits.ofStudio().limits(PEARL));
		assertFalse(Files.exists(folder.resolve("studio.mv.db")), "asking makes no store");
		shelve(StockFamily.CARD, "0.4");
		StockLimits limits = StockLimits.ofStudio();
		assertEquals(1.2, pearl().thinnestStroke());
		assertSame(limits, StockLimits.ofStudio(), "nothing is looked up while nothing changes");
		shelve(StockFamily.CARD, "0.6");
		assertEquals(1.8, pearl().thinnestStroke());
		try (Store store = Store.open(Studio.folder(), StockShelf.AREA)) {
			StockShelf shelf = new StockShelf(store);
			shelf.remove(PEARL, shelf.find(PEARL).orElseThrow().revision());
			assertEquals(Optional.empty(), StockLimits.ofStudio().limits(PEARL), "while somebody here has it open too");
		}
	}

	@Test
	void studiosDoNotMix(@TempDir Path other) throws Exception {
		shelve(StockFamily.CARD, "0.4");
		assertEquals(1.2, pearl().thinnestStroke());
		Studio.choose(Optional.of(other));
		assertEquals(Optional.empty(), StockLimits.ofStudio().limits(PEARL));
		assertEquals(Optional.empty(), StockLimits.remembered().limits(PEARL));
	}

	@Test
	void screenIsGivenWhatIsRemembered() throws Exception {
		shelve(StockFamily.CARD, "0.4");
		for (int i = 0; i < 500 && StockLimits.remembered().limits(PEARL).isEmpty(); i++) {
			Thread.sleep(20);
		}
		assertEquals(1.2, StockLimits.remembered().limits(PEARL).orElseThrow().thinnestStroke());
	}

	/** A lock on the file is what another process would hold. */
	@Test
	void storeInUseIsAProblemAndWhatWasKnownHolds() throws Exception {
		shelve(StockFamily.CARD, "0.4");
		assertEquals(1.2, pearl().thinnestStroke());
		Files.writeString(folder.resolve("studio.revision"), "changed by another process");
		try (FileChannel other = FileChannel.open(folder.resolve("studio.lock"), StandardOpenOption.WRITE)) {
			other.lock();
			StockLimits limits = StockLimits.ofStudio();
			assertEquals(1, limits.problems().size(), limits.problems().toString());
			assertTrue(limits.problems().get(0).contains("studio.mv.db"), limits.problems().get(0));
			assertEquals(1.2, limits.limits(PEARL).orElseThrow().thinnestStroke());
			assertSame(limits, StockLimits.ofStudio(), "it is not waited for at every key");
		}
		shelve(StockFamily.CARD, "0.5");
		assertEquals(List.of(), StockLimits.ofStudio().problems());
		assertEquals(1.5, pearl().thinnestStroke());
	}

	@Test
	void brokenStoreIsAProblem() throws Exception {
		Files.writeString(folder.resolve("studio.mv.db"), "no database at all");
		StockLimits limits = StockLimits.ofStudio();
		assertEquals(1, limits.problems().size(), limits.problems().toString());
		assertEquals(Limits.CARD, limits.limits("card").orElseThrow());
		assertTrue(findings(limits, "M0 0V20H20V0Z").stream().anyMatch(f -> f.id().equals("limits-unreadable")
				&& f.message().equals(limits.problems().get(0))));
	}

	private static List<Finding> findings(StockLimits limits, String path) {
		Job job = SampleJobs.outline(path, OperationKind.CUT);
		job.getLayers().get(0).setStock(PEARL);
		return Makeready.findings(SampleJobs.prepared(job), LayerLimits.byStock(limits), Tolerance.DEFAULT, Monitor.NONE);
	}

	@Test
	void layersOfAShelvedStockAreCheckedByIt() throws Exception {
		shelve(StockFamily.CARD, "0.4");
		for (double width : new double[] { 1.15, 1.25 }) {
			List<Finding> found = findings(StockLimits.ofStudio(), "M0 0V%sH40V0Z".formatted(width)).stream()
					.filter(finding -> finding.id().equals("stroke-too-thin")).toList();
			assertEquals(width < 1.2 ? 1 : 0, found.size());
			found.forEach(finding -> assertEquals(1.2, finding.limit().getAsDouble()));
		}
	}

	/** Sides and sizes in mm; the margin is 5 mm on each side. Empty limit: it goes on one of the sizes. */
	@ParameterizedTest
	@CsvSource(value = { "200, 287, A4, , , false", "287, 200, A4, , , false", "200.5, 100, A4, , , false", // turned
			"201, 280, A4, 201, 200, true", "100, 290, A4, 290, 287, true", "210, 297, A4, 210, 200, true",
			"220, 290, A4, 220, 200, false", "201, 280, A4 A3, , , false", "290, 410, A4 A3, 290, 287, true",
			"400, 500, A4 A3, 400, 287, false", "90, 900, A4 roll_100mm, , , false", "95, 900, A4 roll_100mm, 95, 90, true",
			"90, 995, roll_100mm_x_1m, 995, 990, true" })
	void pieceHasToGoOnOneOfTheSheets(double width, double height, String sizes, Double measured, Double limit,
			boolean margin) throws Exception {
		shelve(StockFamily.CARD, "0.3",
				Stream.of(sizes.split(" ")).map(size -> size.replace('_', ' ')).toArray(String[]::new));
		List<Finding> found = findings(StockLimits.ofStudio(), "M0 0V%sH%sV0Z".formatted(height, width)).stream()
				.filter(finding -> finding.id().equals("piece-too-large")).toList();
		assertEquals(measured == null ? 0 : 1, found.size(), found.toString());
		for (Finding finding : found) {
			assertEquals(measured, finding.measured().getAsDouble(), 1e-9);
			assertEquals(limit, finding.limit().getAsDouble(), 1e-9);
			assertEquals(margin, finding.message().contains("margin"), finding.message());
		}
	}
}
