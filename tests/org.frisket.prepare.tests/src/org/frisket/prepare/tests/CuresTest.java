package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.editing.Edit;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Tolerance;
import org.frisket.model.CornerJoin;
import org.frisket.model.Element;
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
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;

/** Every cure is carried out on the job itself: the finding has to be gone, and undo has to bring the bytes back. */
class CuresTest {

	private static final JobPreparer PREPARER = new JobPreparer(FontLibraries.installed());

	private static PreparedJob prepared(Job job) {
		return PREPARER.prepare(job, Tolerance.DEFAULT, Monitor.NONE);
	}

	private static List<Finding> findings(Job job, String kind) {
		return Makeready.findings(prepared(job), Limits.CARD, Tolerance.DEFAULT, Monitor.NONE).stream()
				.filter(finding -> finding.id().equals(kind)).toList();
	}

	private static List<Cure> cures(Job job, Finding finding) {
		return Makeready.cures(finding, trial(job, Monitor.NONE));
	}

	private static Trial trial(Job job, Monitor monitor) {
		return Makeready.trial(prepared(job), PREPARER, FontLibraries.installed(), Limits.CARD, Tolerance.DEFAULT,
				monitor);
	}

	private static List<String> names(List<Cure> cures) {
		return cures.stream().map(Cure::name).toList();
	}

	/** Carries each cure of the first finding of a kind out, one after the other, and gives their names. */
	private static List<String> tryAll(Job job, String kind) {
		try {
			List<Finding> before = findings(job, kind);
			assertFalse(before.isEmpty(), "nothing to cure: " + kind);
			List<Cure> cures = cures(job, before.get(0));
			byte[] bytes = JobFile.toBytes(job);
			for (Cure cure : cures) {
				Edit edit = cure.edit(job).orElseThrow();
				assertTrue(edit.canApply(), cure.name());
				edit.apply();
				assertTrue(findings(job, kind).size() < before.size(), cure.name());
				edit.undo();
				assertArrayEquals(bytes, JobFile.toBytes(job), cure.name());
			}
			return names(cures);
		} catch (IOException e) {
			throw new AssertionError(e);
		}
	}

	private static void apply(Job job, Cure cure) {
		cure.edit(job).orElseThrow().apply();
	}

	private static Job wording(String text, String font, double height) {
		Job job = Jobs.create("pier", "Pier signs");
		Wording wording = Jobs.addWording(Jobs.addLayer(job, "Card"), text, height);
		wording.setFont(Jobs.font(font, null, null, null));
		Jobs.addOperation(wording, OperationKind.CUT);
		return job;
	}

	private static Wording wording(Job job) {
		return (Wording) Jobs.elements(job).get(0);
	}

	private static Outline outline(Job job) {
		return (Outline) Jobs.elements(job).get(0);
	}

	private static Job cut(String pathData) {
		return SampleJobs.outline(pathData, OperationKind.CUT);
	}

	private static Mat mat(Job job, double distance, Element... behind) {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), distance, List.of(behind));
		Jobs.addOperation(mat, OperationKind.CUT);
		return mat;
	}

	@Test
	void openContourIsClosedByALine() {
		Job job = cut("M0 0H30V30H0V3");
		assertEquals("Close the contour", tryAll(job, "contour-open").get(0));
		apply(job, cures(job, findings(job, "contour-open").get(0)).get(0));
		assertEquals(900, prepared(job).elements().findFirst().orElseThrow().region().area(), 1e-6);
	}

	@Test
	void openContourOfATurnedAndScaledOutlineIsClosed() {
		Job job = cut("M0 0H30V30H0V3");
		outline(job).setTransform(new Matrix(0, 2, -2, 0, 40, -7));
		tryAll(job, "contour-open");
		apply(job, cures(job, findings(job, "contour-open").get(0)).get(0));
		assertEquals(3600, prepared(job).elements().findFirst().orElseThrow().region().area(), 1e-6);
	}

	@Test
	void onlyTheOneContourIsClosedWhenSeveralAreOpen() {
		Job job = cut("M0 0H30V30H0V3 M100 0H130V30H100V5 M200 0H230V30H200Z");
		List<Finding> open = findings(job, "contour-open");
		assertEquals(2, open.size());
		for (Finding finding : open) {
			apply(job, cures(job, finding).get(0));
		}
		assertEquals(List.of(), findings(job, "contour-open"));
		assertEquals(2700, prepared(job).elements().findFirst().orElseThrow().region().area(), 1e-6);
	}

	@Test
	void lineThatEnclosesNothingIsDrawnAndNotClosed() {
		assertEquals(List.of("Draw it instead"), tryAll(cut("M0 0L30 9"), "contour-open"));
	}

	@Test
	void lineBesideAClosedContourIsNotCuredByKey() {
		assertEquals(List.of(), tryAll(cut("M0 0H30V30H0Z M40 0L60 9"), "contour-open"));
	}

	@Test
	void openContoursOfManyShapesAreClosed() {
		Random random = new Random(8);
		for (int i = 0; i < 40; i++) {
			StringBuilder path = new StringBuilder();
			double gap = 0.3 + 2 * random.nextDouble();
			int corners = 3 + random.nextInt(6);
			for (int c = 0; c <= corners; c++) {
				double angle = (2 * Math.PI - gap / 10) * c / corners;
				path.append(c == 0 ? "M" : "L").append(70 + 25 * Math.cos(angle)).append(" ")
						.append(70 + 25 * Math.sin(angle));
			}
			assertTrue(tryAll(cut(path.toString()), "contour-open").contains("Close the contour"), path.toString());
		}
	}

	@Test
	void wordingIsSetAtTheLeastHeightAtWhichItCanBeCut() {
		for (String font : List.of("Liberation Serif", "Liberation Sans", "Liberation Mono", "DejaVu Sans",
				"DejaVu Serif Condensed")) {
			Job job = wording("Harbour Lane", font, 8);
			tryAll(job, "stroke-too-thin");
			Cure cure = cures(job, findings(job, "stroke-too-thin").get(0)).get(0);
			assertTrue(cure.name().matches("Set it [\\d.]+ ?mm high"), cure.name());
			apply(job, cure);
			double height = wording(job).getHeight();
			assertEquals(List.of(), findings(job, "stroke-too-thin"), font);
			wording(job).setHeight(height - 0.2);
			assertFalse(findings(job, "stroke-too-thin").isEmpty(), font + " at " + (height - 0.2));
		}
	}

	@Test
	void joinedWordingIsMadeLargerToo() {
		Job job = wording("Regatta", "Liberation Serif", 9);
		wording(job).setJoined(true);
		wording(job).setTouch(0.4);
		String name = tryAll(job, "stroke-too-thin").get(0);
		assertTrue(name.matches("Set it [\\d.]+ mm high, touching by [\\d.]+ mm"), name);
	}

	@Test
	void allFindingsOfAWordingShareTheOneCure() {
		Job job = wording("Regatta", "Liberation Serif", 6);
		List<Finding> thin = findings(job, "stroke-too-thin");
		assertTrue(thin.size() > 3);
		Trial trial = trial(job, Monitor.NONE);
		List<String> first = names(Makeready.cures(thin.get(0), trial));
		thin.forEach(finding -> assertEquals(first, names(Makeready.cures(finding, trial))));
	}

	private static Optional<Cure> heavier(Job job) {
		return cures(job, findings(job, "stroke-too-thin").get(0)).stream()
				.filter(cure -> cure.name().startsWith("Make its strokes")).findFirst();
	}

	@Test
	void thinLettersAreMadeHeavierByNoMoreThanTheyNeed() throws IOException {
		Job job = wording("Ferry", "Liberation Serif", 18);
		Wording ferry = wording(job);
		ferry.setTransform(new Matrix(0, 1.5, -1.5, 0, 40, -7));
		ferry.setEmbolden(-0.1);
		double thinnest = findings(job, "stroke-too-thin").stream().mapToDouble(f -> f.measured().getAsDouble()).min()
				.getAsDouble();
		tryAll(job, "stroke-too-thin");
		Cure cure = heavier(job).orElseThrow();
		byte[] bytes = JobFile.toBytes(job);
		Edit edit = cure.edit(job).orElseThrow();
		edit.apply();
		assertEquals(List.of(), findings(job, "stroke-too-thin"));
		assertEquals(18, ferry.getHeight());
		double needed = (1 - thinnest) / 2 / 1.5;
		assertTrue(ferry.getEmbolden() + 0.1 >= needed && ferry.getEmbolden() + 0.1 < needed + 0.12,
				ferry.getEmbolden() + " for " + needed);
		edit.undo();
		assertArrayEquals(bytes, JobFile.toBytes(job));
	}

	@Test
	void lettersThatWouldFillAreNotMadeHeavier() {
		// the inside of an e of this size is narrower than what its strokes lack
		assertEquals(Optional.empty(), heavier(wording("ferry", "Liberation Serif", 4)));
	}

	@Test
	void lettersThatWouldRunTogetherAreNotMadeHeavier() {
		Job job = wording("IIII", "Liberation Serif", 7);
		List<Piece> pieces = prepared(job).elements().findFirst().orElseThrow().region().pieces().stream()
				.sorted(Comparator.comparingDouble(piece -> piece.bounds().minX())).toList();
		double gap = pieces.get(1).bounds().minX() - pieces.get(0).bounds().maxX();
		// they grow by 0.4 mm on each side
		wording(job).setTracking(0.85 - gap);
		assertTrue(heavier(job).isPresent());
		// one piece with three insides: as many contours as before
		wording(job).setTracking(0.2 - gap);
		assertEquals(4, prepared(job).elements().findFirst().orElseThrow().region().pieces().size());
		assertEquals(Optional.empty(), heavier(job));
	}

	@Test
	void dotsOfASmallWordingGrowUntilTheyCanBePicked() {
		Job job = wording("pier i.", "Liberation Sans", 9);
		assertTrue(tryAll(job, "piece-too-small").get(0).startsWith("Set it "));
	}

	@Test
	void thinOutlineIsScaledOrMadeHeavier() {
		Job job = cut("M0 0H60V0.6H0Z");
		List<String> names = tryAll(job, "stroke-too-thin");
		// 0.6 mm to 1 mm, as exactly as thickness is measured
		assertTrue(names.get(0).matches("Make it 16[67]\\.\\d % of its size"), names.get(0));
		assertTrue(names.get(1).startsWith("Make its strokes "), names.toString());
		apply(job, cures(job, findings(job, "stroke-too-thin").get(0)).get(1));
		double thickness = prepared(job).elements().findFirst().orElseThrow().region().bounds().height();
		assertTrue(thickness >= 1 && thickness < 1.2, "" + thickness);
	}

	@Test
	void heavierOutlineKeepsItsOpenLines() {
		Job job = cut("M0 0H60V0.6H0Z M0 20L60 20");
		int lines = prepared(job).elements().findFirst().orElseThrow().lines().size();
		Cure heavier = cures(job, findings(job, "stroke-too-thin").get(0)).stream()
				.filter(cure -> cure.name().startsWith("Make its strokes")).findFirst().orElseThrow();
		apply(job, heavier);
		assertEquals(lines, prepared(job).elements().findFirst().orElseThrow().lines().size());
	}

	@Test
	void smallPieceOfAnOutlineIsLeftOut() {
		Job job = cut("M0 0H30V30H0Z M40 0H41.2V1.2H40Z M50 0H80V30H50Z");
		assertEquals("Leave it out", tryAll(job, "piece-too-small").get(0));
		apply(job, cures(job, findings(job, "piece-too-small").get(0)).get(0));
		assertEquals(1800, prepared(job).elements().findFirst().orElseThrow().region().area(), 1e-6);
	}

	@Test
	void overlappingContoursOfASmallPieceGoTogether() {
		Job job = cut("M0 0H30V30H0Z M40 0H41V1H40Z M40.5 0.5H41.5V1.5H40.5Z");
		apply(job, cures(job, findings(job, "piece-too-small").get(0)).get(0));
		assertEquals(900, prepared(job).elements().findFirst().orElseThrow().region().area(), 1e-6);
	}

	@Test
	void outlineThatIsNothingButASpeckIsDeletedWithItsMat() {
		Job job = cut("M0 0H1V1H0Z");
		mat(job, 3, outline(job));
		assertEquals("Leave it out", tryAll(job, "piece-too-small").get(0));
		apply(job, cures(job, findings(job, "piece-too-small").get(0)).get(0));
		assertEquals(List.of(), Jobs.elements(job));
	}

	@Test
	void thinMatIsSetFurtherOutOrSmoothed() {
		// two discs whose mats just meet, in a neck
		Job job = cut("M10 0A10 10 0 1 0 10 0.001Z M36 0A10 10 0 1 0 36 0.001Z");
		Mat mat = mat(job, 3.005, outline(job));
		mat.setCorners(CornerJoin.ROUND);
		List<String> names = tryAll(job, "stroke-too-thin");
		assertTrue(names.stream().anyMatch(name -> name.startsWith("Set the mat at ")), names.toString());
		assertTrue(names.stream().anyMatch(name -> name.startsWith("Smooth the mat by ")), names.toString());
	}

	@Test
	void matAroundASpeckGrowsUntilItCanBePicked() {
		Job job = SampleJobs.outline("M0 0H0.4V0.4H0Z", OperationKind.DRAW);
		mat(job, 0.2, outline(job));
		assertTrue(tryAll(job, "piece-too-small").get(0).startsWith("Set the mat at "));
	}

	@Test
	void matBehindItselfIsTakenOutOfItsRing() {
		Job job = cut("M0 0H30V30H0Z");
		Mat first = mat(job, 3, outline(job));
		Mat second = mat(job, 6, first, outline(job));
		first.getBehind().add(second);
		List<String> names = tryAll(job, "mat-behind-itself");
		assertEquals(List.of("Take it out of the ring of mats", "Remove the mat"), names);
	}

	@Test
	void matThatFollowsOnlyItsRingIsRemoved() {
		Job job = cut("M0 0H30V30H0Z");
		Mat first = mat(job, 3, outline(job));
		Mat second = mat(job, 6, first);
		first.getBehind().clear();
		first.getBehind().add(second);
		assertEquals(List.of("Remove the mat"), tryAll(job, "mat-behind-itself"));
	}

	@Test
	void vanishedMatComesBackAtTheFurthestSoundDistance() {
		Job job = cut("M0 0H30V8H0Z");
		Mat mat = mat(job, -5, outline(job));
		tryAll(job, "mat-vanished");
		apply(job, cures(job, findings(job, "mat-vanished").get(0)).get(0));
		// what is left of 8 mm has to be 1 mm thick
		assertEquals(-3.5, mat.getDistance(), 0.101);
	}

	@Test
	void missingFontIsReplacedByTheNearestByName() {
		Job job = wording("Ferry", "Liberation Sanz", 30);
		assertTrue(tryAll(job, "font-missing").get(0).startsWith("Set it in Liberation Sans"));
	}

	@Test
	void missingFontOfNoLikeNameIsReplacedByOneThatHasTheCharacters() {
		Job job = wording("Паром", "Zanzibar Regal Wide", 30);
		assertEquals(1, tryAll(job, "font-missing").size());
		apply(job, cures(job, findings(job, "font-missing").get(0)).get(0));
		assertEquals(List.of(), findings(job, "glyph-missing"));
	}

	@Test
	void wordingWithoutAFontIsGivenOne() {
		Job job = wording("Ferry", "", 30);
		wording(job).setFont(null);
		assertEquals(1, tryAll(job, "font-missing").size());
	}

	@Test
	void anotherVersionOfAFontIsKept() {
		Job job = wording("Ferry", "Liberation Sans", 30);
		wording(job).getFont().setDigest("0".repeat(64));
		assertEquals(List.of("Keep the version at hand"), tryAll(job, "font-differs"));
	}

	@Test
	void missingGlyphIsFoundInAnotherFontOrLeftOut() {
		// an aeroplane, which the text faces have not
		Job job = wording("Pier \u2708", "Liberation Serif", 30);
		List<String> names = tryAll(job, "glyph-missing");
		assertTrue(names.stream().anyMatch(name -> name.startsWith("Set it in ")), names.toString());
		assertEquals("Leave out what the font lacks", names.get(names.size() - 1));
	}

	@Test
	void characterThatNoFontHasIsLeftOut() {
		Job job = wording("Pier \uE123\uE124", "Liberation Serif", 30);
		assertEquals("Leave out what the font lacks", names(cures(job, findings(job, "glyph-missing").get(0)))
				.stream().reduce((first, last) -> last).orElseThrow());
		List<Cure> cures = cures(job, findings(job, "glyph-missing").get(0));
		apply(job, cures.get(cures.size() - 1));
		assertEquals("Pier ", wording(job).getText());
	}

	@Test
	void loosePieceOfAWordIsLeftToTheHand() {
		Job job = wording("pier", "Liberation Sans", 30);
		wording(job).setJoined(true);
		Finding loose = findings(job, "loose-piece").get(0);
		assertEquals(List.of(), cures(job, loose));
		assertFalse(loose.cure().isBlank());
	}

	@Test
	void lockedElementIsNotCured() {
		Job job = cut("M0 0H30V30H0V3");
		outline(job).setLocked(true);
		assertEquals(List.of(), cures(job, findings(job, "contour-open").get(0)));
	}

	@Test
	void hiddenElementsAndLayersHaveNoFindings() {
		Job job = cut("M0 0H30V30H0V3");
		Layer other = Jobs.addLayer(job, "Other");
		Jobs.addOperation(Jobs.addOutline(other, "M0 0H30V30H0V3"), OperationKind.CUT);
		assertEquals(2, findings(job, "contour-open").size());
		other.setVisible(false);
		assertEquals(1, findings(job, "contour-open").size());
		outline(job).setVisible(false);
		assertEquals(0, findings(job, "contour-open").size());
	}

	@Test
	void cureMeetsTheJobItIsAppliedTo() {
		Job job = cut("M0 0H30V30H0V3");
		Cure cure = cures(job, findings(job, "contour-open").get(0)).get(0);
		assertTrue(cure.edit(Jobs.create("other", "Other")).isEmpty());
	}

	@Test
	void cureOfAnotherBundleIsOfferedAndOneThatFailsIsPassedOver() {
		Job job = cut("M0 0H30V30H0Z");
		List<Finding> seen = findings(job, "seen");
		assertEquals(List.of("Count it no more"), names(cures(job, seen.get(0))));
	}

	@Test
	void cancelStopsTheSearch() {
		Job job = wording("Harbour Lane", "Liberation Serif", 8);
		Finding thin = findings(job, "stroke-too-thin").get(0);
		Trial trial = trial(job, () -> true);
		assertThrows(CancellationException.class, () -> Makeready.cures(thin, trial));
	}
}
