package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.frisket.editing.Edit;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Unit;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.fonts.FontLibraries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What each check finds on shapes of known measures and does not find where there is nothing. Every cure is carried out:
 * there has to be one finding less of the kind, and undo has to bring the bytes back.
 */
class ChecksTest {

	private static final JobPreparer PREPARER = new JobPreparer(FontLibraries.installed());
	private static final Set<String> OF_THESE_TESTS = Set.of("seen", "check-failed");

	private final Job job = Jobs.create("pier", "Pier signs");
	private final Layer layer = Jobs.addLayer(job, "Card");
	private LayerLimits limits = LayerLimits.byStock(StockLimits.BUILT_IN);

	private static Outline outline(Layer layer, String data, OperationKind... kinds) {
		Outline outline = Jobs.addOutline(layer, data);
		for (OperationKind kind : kinds) {
			Jobs.addOperation(outline, kind);
		}
		return outline;
	}

	private Outline cut(String data) {
		return outline(layer, data, OperationKind.CUT);
	}

	private Wording wording(Layer on, String text, String font, double height, OperationKind kind) {
		Wording wording = Jobs.addWording(on, text, height);
		wording.setFont(Jobs.font(font, null, null, null));
		Jobs.addOperation(wording, kind);
		return wording;
	}

	private List<Finding> findings() {
		return Makeready.findings(PREPARER.prepare(job, Tolerance.DEFAULT, Monitor.NONE), limits, Tolerance.DEFAULT,
				Monitor.NONE).stream().filter(finding -> !OF_THESE_TESTS.contains(finding.id())).toList();
	}

	private Set<String> kinds() {
		return findings().stream().map(Finding::id).collect(Collectors.toCollection(TreeSet::new));
	}

	private List<Finding> findings(String kind) {
		return findings().stream().filter(finding -> finding.id().equals(kind)).toList();
	}

	private Finding only(String kind) {
		List<Finding> found = findings(kind);
		assertEquals(1, found.size(), () -> findings().toString());
		assertTrue(found.get(0).message().endsWith("."), found.get(0).message());
		assertTrue(found.get(0).cure().endsWith("."), found.get(0).cure());
		return found.get(0);
	}

	private static void assertAt(double x, double y, double near, Finding finding) {
		assertEquals(x, finding.place().x(), near, finding.toString());
		assertEquals(y, finding.place().y(), near, finding.toString());
	}

	/** Names of the cures of the first finding of a kind, each of which was carried out. */
	private List<String> cures(String kind) {
		try {
			List<Finding> before = findings(kind);
			List<Cure> cures = Makeready.cures(before.get(0),
					Makeready.trial(PREPARER.prepare(job, Tolerance.DEFAULT, Monitor.NONE), PREPARER,
							FontLibraries.installed(), limits, Tolerance.DEFAULT, Monitor.NONE));
			byte[] bytes = JobFile.toBytes(job);
			for (Cure cure : cures) {
				Edit edit = cure.edit(job).orElseThrow();
				assertFalse(edit.name().isBlank());
				edit.apply();
				assertTrue(count(findings(kind)) < count(before), cure.name());
				edit.undo();
				assertArrayEquals(bytes, JobFile.toBytes(job), cure.name());
			}
			return cures.stream().map(Cure::name).toList();
		} catch (IOException e) {
			throw new AssertionError(e);
		}
	}

	private static int count(List<Finding> findings) {
		return findings.stream().mapToInt(finding -> 1 + finding.more()).sum();
	}

	@Test
	void soundShapesHaveNoFindings() {
		cut("M0 0V40H60V0Z");
		cut("M70 0V40H90V0Z");
		outline(layer, "M10 10L50 30", OperationKind.DRAW);
		assertEquals(List.of(), findings());
	}

	/** What a new job is: two words, without a stock. */
	@ParameterizedTest
	@ValueSource(strings = { "Liberation Sans", "Liberation Serif", "DejaVu Sans", "DejaVu Sans Bold" })
	void freshWordingHasNoFindings(String font) {
		wording(layer, "Harbour Lane", font, 40, OperationKind.CUT);
		assertEquals(List.of(), findings());
	}

	/** A step that says itself why there is nothing is not said over again, and what is hidden is nobody's business. */
	@Test
	void anElementOfWhichNothingIsLeftBlocks() {
		Wording tiny = wording(layer, "Harbour Lane", "Liberation Sans", 0.001, OperationKind.CUT);
		Finding gone = only("nothing-left");
		assertEquals(Severity.BLOCKING, gone.severity());
		assertEquals(tiny.getId(), gone.element());
		tiny.setHeight(40);
		assertEquals(Set.of(), kinds());
		tiny.setEmbolden(-20);
		assertEquals(Set.of("letters-vanished"), kinds());
		assertEquals(Severity.BLOCKING, only("letters-vanished").severity());
		tiny.setEmbolden(0);
		tiny.setText("");
		assertEquals(List.of(), findings("nothing-left"));
		Outline speck = cut("M0 0V0.001H0.001V0Z");
		speck.setName("speck");
		assertEquals(speck.getId(), only("nothing-left").element());
		speck.setVisible(false);
		assertEquals(List.of(), findings("nothing-left"));
	}

	@Test
	void crossingOutlineIsNoted() {
		cut("M0 0V20L20 0V20Z");
		Finding crossing = findings("contour-crossing").get(0);
		assertEquals(Severity.NOTE, crossing.severity());
		assertAt(10, 10, 0.1, crossing);
		assertEquals(List.of("Keep the clean outline"), cures("contour-crossing"));
	}

	@Test
	void doubledContourIsNotedWithItsLength() {
		cut("M0 0V20H30V0Z M0 0V20H30V0Z");
		assertEquals(100, only("line-doubled").measured().getAsDouble(), 0.1);
		assertEquals(List.of("Keep the clean outline"), cures("line-doubled"));
	}

	@ParameterizedTest
	@CsvSource({ "0.3, true", "0.49, true", "0.51, false" })
	void gapBetweenPiecesIsFoundJustBelowTheLimit(double gap, boolean found) {
		cut("M0 0V20H20V0Z");
		Outline right = cut("M%1$s 0V20H40V0Z".formatted(20 + gap));
		assertEquals(found ? Set.of("gap-too-narrow") : Set.of(), kinds());
		if (found) {
			Finding narrow = only("gap-too-narrow");
			assertEquals(gap, narrow.measured().getAsDouble(), 1e-6);
			assertEquals(right.getId(), narrow.element());
			assertEquals(20 + gap / 2, narrow.place().x(), 1e-6);
			assertEquals(1, cures("gap-too-narrow").size());
		}
	}

	@Test
	void lettersTooNearToEachOtherAreSpacedOut() {
		Wording wording = wording(layer, "III", "Liberation Sans", 20, OperationKind.CUT);
		List<Piece> pieces = PREPARER.prepare(job, Tolerance.DEFAULT, Monitor.NONE).elements().findFirst().orElseThrow()
				.region().pieces().stream().sorted(Comparator.comparingDouble(piece -> piece.bounds().minX())).toList();
		wording.setTracking(0.2 - pieces.get(1).bounds().minX() + pieces.get(0).bounds().maxX());
		assertEquals(2, findings("gap-too-narrow").size(), () -> findings().toString());
		assertTrue(cures("gap-too-narrow").get(0).startsWith("Set its letters"), cures("gap-too-narrow").toString());
	}

	@Test
	void layersDoNotComeTooNearToEachOther() {
		cut("M0 0V20H20V0Z");
		outline(Jobs.addLayer(job, "Another"), "M20.2 0V20H40V0Z", OperationKind.CUT);
		assertEquals(List.of(), findings());
	}

	@ParameterizedTest
	@CsvSource({ "0.3, true", "0.6, false" })
	void slitIsFound(double width, boolean found) {
		cut("M0 0V30H20V%1$sH5V%2$sH20V0Z".formatted(10 + width, 10));
		assertEquals(found ? Set.of("slit-too-narrow") : Set.of(), kinds());
		if (found) {
			assertEquals(width, only("slit-too-narrow").measured().getAsDouble(), 0.03);
			assertTrue(cures("slit-too-narrow").contains("Fill narrow slits"));
		}
	}

	/** What narrows to a point is no slit: a blade goes into it and out again. */
	@Test
	void notchIsNoSlit() {
		cut("M0 0V30H40V0H24L20 25L16 0Z");
		assertEquals(List.of(), findings("slit-too-narrow"));
	}

	@ParameterizedTest
	@CsvSource({ "1.1, true", "1.3, false" })
	void holeIsFoundByItsWidth(double side, boolean found) {
		cut("M0 0V20H30V0Z M10 10H15V%1$sH10Z".formatted(10 + side));
		assertEquals(found ? Set.of("hole-too-small") : Set.of(), kinds());
		if (found) {
			assertEquals(side, only("hole-too-small").measured().getAsDouble(), 0.02);
			assertAt(12.5, 10 + side / 2, 1e-6, only("hole-too-small"));
			assertTrue(cures("hole-too-small").contains("Fill the hole"));
		}
	}

	@ParameterizedTest
	@CsvSource({ "16, true", "24, false" })
	void tipIsFoundByItsAngle(double degrees, boolean found) {
		double half = 30 * Math.tan(Math.toRadians(degrees / 2));
		cut("M0 0L30 %1$sV%2$sZ".formatted(half, -half));
		assertEquals(found, kinds().contains("corner-too-sharp"));
		if (found) {
			Finding sharp = only("corner-too-sharp");
			assertEquals(degrees, sharp.measured().getAsDouble(), 0.01);
			assertEquals(Unit.DEGREES, sharp.unit());
			assertAt(0, 0, 0.01, sharp);
			assertEquals(List.of("Blunt its corners by 0.25 mm"), cures("corner-too-sharp"));
		}
	}

	/** A regular polygon of 400 corners on a circle of 5 mm has 12.7 of them on each mm, 0.079 mm apart. */
	@Test
	void tooManyNodesAreToldOnce() {
		StringBuilder path = new StringBuilder();
		for (int i = 0; i < 400; i++) {
			double angle = -2 * Math.PI * i / 400;
			path.append(i == 0 ? "M" : "L").append(20 + 5 * Math.cos(angle)).append(' ').append(20 + 5 * Math.sin(angle));
		}
		cut(path.append("Z").toString());
		Finding many = only("nodes-too-many");
		assertEquals(400 / (10 * Math.PI), many.measured().getAsDouble(), 0.05);
		assertEquals(Unit.PER_MM, many.unit());
		assertEquals(List.of("Make its curves simpler"), cures("nodes-too-many"));
		limits = LayerLimits.same(Limits.CARD.with(Limit.NODE_STEP, 0.08));
		assertEquals(0.079, only("nodes-too-close").measured().getAsDouble(), 0.001);
	}

	@Test
	void islandInAHoleIsNoted() {
		cut("M0 0V40H40V0Z M10 10H30V30H10Z M15 15V25H25V15Z");
		assertAt(20, 20, 1e-6, only("island-falls-out"));
		assertEquals(List.of("Leave it out"), cures("island-falls-out"));
	}

	@Test
	void islandOfAMatGoesWithItsHole() {
		Outline frame = outline(layer, "M0 0V40H40V0Z M10 10H30V30H10Z M17 17V23H23V17Z", OperationKind.DRAW);
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Behind"), 2, List.of(frame));
		Jobs.addOperation(mat, OperationKind.CUT);
		assertEquals(mat.getId(), only("island-falls-out").element());
		assertEquals("Fill the holes of the mat", cures("island-falls-out").get(0));
	}

	@Test
	void pieceLargerThanTheSheetIsFoundOnceSheetsAreKnown() {
		Outline strip = cut("M0 0V20H400V0Z");
		assertEquals(List.of(), findings(), "nobody has said how large sheets are");
		limits = LayerLimits.same(Limits.CARD.withSheet(210, 297, 5));
		assertEquals(400, only("piece-too-large").measured().getAsDouble(), 0.01);
		assertEquals(287, only("piece-too-large").limit().getAsDouble(), 0.01);
		assertEquals(List.of("Make it 71.7 % of its size, so that it goes on a sheet"), cures("piece-too-large"));
		strip.setTransform(Matrix.parse("0 1 -1 0 0 0"));
		assertEquals(1, findings("piece-too-large").size(), "however it is turned");
		limits = LayerLimits.same(Limits.CARD.withSheet(297, 420, 5));
		assertEquals(List.of(), findings());
	}

	@Test
	void partsThatOverlapAreFound() {
		cut("M0 0V20H20V0Z");
		Outline front = cut("M17 5V15H40V5Z");
		Finding overlap = only("parts-overlap");
		assertEquals(3, overlap.measured().getAsDouble(), 0.05);
		assertEquals(front.getId(), overlap.element());
		assertEquals(List.of("Lay it on a layer of its own"), cures("parts-overlap"));
	}

	@Test
	void windowInAPlateIsNoOverlap() {
		cut("M0 0V20H40V0Z");
		cut("M10 5V15H30V5Z");
		assertEquals(List.of(), findings());
	}

	@Test
	void edgeOfNeighboursIsCutTwice() {
		cut("M0 0V20H20V0Z");
		cut("M20 5V15H40V5Z");
		Finding twice = only("cut-twice");
		assertEquals(10, twice.measured().getAsDouble(), 0.6);
		assertAt(20, 10, 0.6, twice);
		assertEquals(Set.of("cut-twice"), kinds());
		assertEquals(List.of(), cures("cut-twice"), "to be decided by hand");
	}

	@Test
	void curveOnACurveIsCutTwiceAndLeftOut() {
		cut("M0 0A10 10 0 0 0 20 0A10 10 0 0 0 0 0Z");
		cut("M0 0A10 10 0 0 0 20 0A10 10 0 0 0 0 0Z");
		assertEquals(20 * Math.PI, only("cut-twice").measured().getAsDouble(), 0.6);
		assertEquals(List.of("Leave it out"), cures("cut-twice"));
	}

	@Test
	void crossingLinesAreNotCutTwice() {
		cut("M0 0V20H40V0Z");
		outline(layer, "M10 -5L11 25", OperationKind.DRAW);
		assertEquals(List.of(), findings());
	}

	@Test
	void drawnLineThatIsCutIsFound() {
		cut("M0 0V20H40V0Z");
		Outline line = outline(layer, "M5 20H35", OperationKind.DRAW);
		assertEquals(30, only("drawn-line-cut").measured().getAsDouble(), 0.6);
		assertEquals(line.getId(), only("drawn-line-cut").element());
	}

	@Test
	void outlineThatIsDrawnAndCutIsFound() {
		outline(layer, "M0 0V20H40V0Z", OperationKind.DRAW, OperationKind.CUT);
		only("drawn-line-cut");
		assertEquals(List.of("Only draw it", "Only cut it"), cures("drawn-line-cut"));
	}

	@Test
	void layerWithoutStockIsNotedOnlyBesideOthers() {
		cut("M0 0V20H20V0Z");
		Layer other = Jobs.addLayer(job, "Film");
		outline(other, "M0 0V20H20V0Z", OperationKind.CUT);
		assertEquals(List.of(), findings());
		other.setStock("film");
		assertTrue(only("stock-missing").message().contains("Card"));
		assertEquals(List.of("Make the layer of film"), cures("stock-missing"));
		other.setStock("velvet");
		assertTrue(only("stock-unknown").message().contains("velvet"));
	}

	@Test
	void elementWithoutOperationIsNotedUnlessOthersStandOnIt() {
		Outline idle = outline(layer, "M0 0V20H20V0Z");
		assertEquals(idle.getId(), only("operation-missing").element());
		assertEquals(List.of("Cut it", "Draw it"), cures("operation-missing"));
		Jobs.addOperation(Jobs.addMat(Jobs.addLayer(job, "Behind"), 3, List.of(idle)), OperationKind.CUT);
		assertEquals(List.of(), findings());
	}

	/** Liberation Sans: x-height 1082 of 1409 of the capitals, read with fontTools; so 2 mm of x are 2.6 mm of H. */
	@ParameterizedTest
	@CsvSource({ "2.5, harbour, true", "2.7, harbour, false", "2.5, HARBOUR, false", "1.9, HARBOUR, true" })
	void penTextIsFoundByItsXHeight(double height, String text, boolean found) {
		wording(layer, text, "Liberation Sans", height, OperationKind.DRAW);
		assertEquals(found ? Set.of("pen-text-small") : Set.of(), kinds());
		if (found) {
			assertEquals(1, cures("pen-text-small").size());
		}
	}

	@Test
	void hiddenElementsDisturbNobody() {
		cut("M0 0V20H20V0Z");
		cut("M17 5V15H40V5Z").setVisible(false);
		assertEquals(List.of(), findings());
	}

	@Test
	void manyOfAKindOnAnElementAreGathered() {
		StringBuilder specks = new StringBuilder();
		for (int i = 0; i < 200; i++) {
			specks.append("M%s %sv1h1v-1z".formatted(3 * (i % 20), 3 * (i / 20)));
		}
		cut(specks.toString());
		List<Finding> small = findings("piece-too-small");
		assertEquals(25, small.size());
		assertEquals(175, small.get(24).more());
		assertTrue(small.get(24).message().contains("175 more"), small.get(24).message());
		assertEquals(0, small.get(0).more());
		assertTrue(cures("piece-too-small").stream().anyMatch(name -> name.startsWith("Make it")));
	}
}
