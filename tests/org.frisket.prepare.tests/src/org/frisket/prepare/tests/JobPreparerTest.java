package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.Element;
import org.frisket.model.HoleRule;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.prepare.Composition;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;

class JobPreparerTest {

	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());

	private PreparedJob prepare(Job job) {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE);
	}

	private static Region region(PreparedJob job, Element element) {
		return job.element(element.getId()).orElseThrow().region();
	}

	private static Job squareWithMat(double distance) {
		Job job = SampleJobs.outline("M0 0H10V10H0Z", OperationKind.CUT);
		Layer layer = Jobs.addLayer(job, "Mat");
		Jobs.addOperation(Jobs.addMat(layer, distance, Jobs.elements(job)), OperationKind.CUT);
		return job;
	}

	private static Mat mat(Job job) {
		return (Mat) job.getLayers().get(1).getElements().get(0);
	}

	@Test
	void withoutMatsTheOthersAreWhatTheyAreWithThem() {
		Job job = squareWithMat(3);
		PreparedJob withoutMats = preparer.prepareWithoutMats(job, Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(2, withoutMats.layers().size());
		assertEquals(List.of(), withoutMats.layers().get(1).elements());
		Element square = job.getLayers().get(0).getElements().get(0);
		assertSame(region(prepare(job), square), region(withoutMats, square));
	}

	@Test
	void matOfASquareHasTheAreaOfSteinersFormula() {
		// A + P r + pi r^2 for a convex shape; Steiner 1840, from memory
		Job job = squareWithMat(3);
		assertEquals(100 + 40 * 3 + Math.PI * 9, region(prepare(job), mat(job)).area(), 0.02 * 60);
	}

	@Test
	void matFollowsWhenTheShapeChanges() {
		Job job = squareWithMat(3);
		prepare(job);
		((Outline) job.getLayers().get(0).getElements().get(0)).setPathData("M0 0H20V10H0Z");
		Bounds bounds = region(prepare(job), mat(job)).bounds();
		assertEquals(26, bounds.width(), 0.05);
		assertEquals(16, bounds.height(), 0.05);
	}

	@Test
	void matFollowsWhenTheShapeMovesAndIsNotComputedAgain() {
		Job job = squareWithMat(3);
		Region before = region(prepare(job), mat(job));
		Element square = job.getLayers().get(0).getElements().get(0);
		square.setTransform(Matrix.translation(100, 50));
		Region after = region(prepare(job), mat(job));
		assertEquals(before.bounds().minX() + 100, after.bounds().minX(), 1e-9);
		assertEquals(before.bounds().minY() + 50, after.bounds().minY(), 1e-9);
		assertEquals(before.nodeCount(), after.nodeCount());
	}

	@Test
	void matsOwnTransformComesOnTop() {
		Job job = squareWithMat(3);
		mat(job).setTransform(Matrix.translation(1, 2));
		assertEquals(-2, region(prepare(job), mat(job)).bounds().minX(), 0.02);
		assertEquals(-1, region(prepare(job), mat(job)).bounds().minY(), 0.02);
	}

	@Test
	void matBehindTwoShapesIsTheirsTogether() {
		Job job = squareWithMat(3);
		mat(job).getBehind().add(Jobs.addOutline(job.getLayers().get(0), "M14 0H24V10H14Z"));
		Region region = region(prepare(job), mat(job));
		assertEquals(1, region.pieces().size(), "outsets of 3 mm close a gap of 4 mm");
		assertEquals(30, region.bounds().width(), 0.05);
	}

	@Test
	void matKeepsOrFillsHoles() {
		Job job = SampleJobs.outline("M0 0H30V30H0Z M10 10V20H20V10Z", OperationKind.CUT);
		Layer layer = Jobs.addLayer(job, "Mat");
		Mat mat = Jobs.addMat(layer, 2, Jobs.elements(job));
		assertEquals(1, region(prepare(job), mat).pieces().get(0).holes().size());
		mat.setHoles(HoleRule.FILL);
		assertEquals(0, region(prepare(job), mat).pieces().get(0).holes().size());
	}

	@Test
	void matOfAMatStandsBehindIt() {
		Job job = squareWithMat(3);
		Mat wider = Jobs.addMat(job.getLayers().get(1), 2, List.of(mat(job)));
		assertEquals(20, region(prepare(job), wider).bounds().width(), 0.1);
	}

	@Test
	void matBehindItselfIsReportedAndHasNoShape() {
		Job job = squareWithMat(3);
		mat(job).getBehind().add(mat(job));
		PreparedJob prepared = prepare(job);
		assertTrue(region(prepared, mat(job)).isEmpty());
		assertEquals(List.of("mat-behind-itself"), prepared.findings().stream().map(Finding::id).toList());
	}

	@Test
	void inwardMatThatVanishesSaysSo() {
		Job job = squareWithMat(-6);
		assertEquals(List.of("mat-vanished"), prepare(job).findings().stream().map(Finding::id).toList());
	}

	@Test
	void unchangedContentIsNotComputedAgain() {
		Job job = SampleJobs.giftTag();
		Element wording = job.getLayers().get(2).getElements().get(0);
		Region first = region(prepare(job), wording);
		assertSame(first, region(prepare(job), wording));
		((Wording) wording).setText("Gift tags");
		assertTrue(region(prepare(job), wording).area() > first.area());
	}

	@Test
	void capitalHIsAsHighAsAskedFor() {
		for (String font : List.of("Liberation Sans", "DejaVu Serif Bold")) {
			Job job = new Composition("H", SampleJobs.face(font), 25.4, Alignment.LEFT, OptionalDouble.empty(),
					List.of(), OperationKind.CUT).toJob();
			assertEquals(25.4, prepare(job).bounds().height(), 0.001, font);
		}
	}

	@Test
	void joinedWordIsOnePiece() {
		Job job = new Composition("Harbour", SampleJobs.face("Liberation Serif"), 30, Alignment.LEFT,
				OptionalDouble.of(0.3), List.of(), OperationKind.CUT).toJob();
		PreparedJob prepared = prepare(job);
		assertEquals(1, prepared.elements().findFirst().orElseThrow().region().pieces().size());
		assertEquals(List.of(), prepared.findings());
	}

	@Test
	void dotsOfAJoinedWordAreReportedAsLoosePieces() {
		Job job = new Composition("tiding", SampleJobs.face("Liberation Serif"), 30, Alignment.LEFT,
				OptionalDouble.of(0.3), List.of(), OperationKind.CUT).toJob();
		List<Finding> findings = prepare(job).findings();
		assertEquals(2, findings.size(), findings.toString());
		findings.forEach(finding -> {
			assertEquals("loose-piece", finding.id());
			assertTrue(finding.place().y() < -25, "dots stand above the x-height");
		});
	}

	@Test
	void twoWordsAreTwoPiecesAndNoneIsLoose() {
		Job job = new Composition("Harbour Lane", SampleJobs.face("Liberation Serif"), 30, Alignment.LEFT,
				OptionalDouble.of(0.3), List.of(), OperationKind.CUT).toJob();
		PreparedJob prepared = prepare(job);
		assertEquals(2, prepared.elements().findFirst().orElseThrow().region().pieces().size());
		assertEquals(List.of(), prepared.findings());
	}

	@Test
	void missingGlyphBlocksAndNamesTheCharacter() {
		Job job = new Composition("A\uA66EB", SampleJobs.face("Liberation Serif"), 30, Alignment.LEFT,
				OptionalDouble.empty(), List.of(), OperationKind.CUT).toJob();
		Finding finding = prepare(job).findings().get(0);
		assertEquals("glyph-missing", finding.id());
		assertEquals(Severity.BLOCKING, finding.severity());
		assertTrue(finding.message().contains("U+A66E") && finding.message().contains("character 2"),
				finding.message());
	}

	@Test
	void missingFontBlocksAndKeepsTheJobGoing() {
		Job job = SampleJobs.giftTag();
		Wording wording = (Wording) job.getLayers().get(2).getElements().get(0);
		wording.setFont(Jobs.font("Harbour Lane Grotesk", "Regular", "00", "/nowhere/harbour.ttf"));
		Jobs.addOutline(job.getLayers().get(2), "M0 0H10V10H0Z");
		PreparedJob prepared = prepare(job);
		assertEquals("font-missing", prepared.findings().get(0).id());
		assertEquals(100, prepared.elements().mapToDouble(e -> e.region().area()).sum(), 1e-6);
	}

	@Test
	void otherVersionOfTheFontIsACaution() {
		Job job = SampleJobs.giftTag();
		Wording wording = (Wording) job.getLayers().get(2).getElements().get(0);
		wording.getFont().setDigest("00");
		assertEquals(List.of("font-differs"), prepare(job).findings().stream().map(Finding::id).toList());
	}

	@Test
	void unreadablePathDataIsAFindingWithItsPlace() {
		Job job = SampleJobs.outline("M0 0L10 oops", OperationKind.CUT);
		Finding finding = prepare(job).findings().get(0);
		assertEquals("path-unreadable", finding.id());
		assertTrue(finding.message().matches(".*\\d+.*"), finding.message());
	}

	@Test
	void cancelEndsThePreparation() {
		assertThrows(CancellationException.class,
				() -> preparer.prepare(SampleJobs.giftTag(), Tolerance.DEFAULT, () -> true));
	}
}
