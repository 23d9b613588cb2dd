package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.frisket.editing.EditHistory;
import org.frisket.editing.shapes.ChangePicture;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.JobHome;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Picture;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.Placeholder;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Unit;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.testkit.RenderedArt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What makeready says of pictures, and what helps. */
class PictureChecksTest {

	private static final double FINE = 30;

	private final Job job = Jobs.create("HL-9", "Gift tags");
	private final Layer layer = Jobs.addLayer(job, "Tags");
	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());

	/** A disc with a radius of 7.5 mm in a picture of 30 by 22.5 mm, 339 dots to the inch. */
	private Picture disc() {
		return Jobs.addPicture(layer, RenderedArt.disc(), "image/png", FINE, 0.75 * FINE);
	}

	private List<Finding> findings() {
		return Makeready.findings(prepared(), Limits.CARD, Tolerance.DEFAULT, Monitor.NONE).stream()
				.filter(finding -> Stream.of("picture", "print", "bleed").anyMatch(finding.id()::startsWith)).toList();
	}

	private PreparedJob prepared() {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE);
	}

	private List<String> ids() {
		return findings().stream().map(Finding::id).toList();
	}

	private void cure(int index) {
		List<Cure> cures = Makeready.cures(findings().get(0), Makeready.trial(prepared(), preparer,
				FontLibraries.installed(), Limits.CARD, Tolerance.DEFAULT, Monitor.NONE));
		assertTrue(cures.size() > index, cures.toString());
		new EditHistory().execute(cures.get(index).edit(job).orElseThrow());
	}

	@Test
	void withoutAnEdgeItIsNotCutAndItsEdgeCanBeFound() {
		Picture picture = disc();
		Jobs.addOperation(picture, OperationKind.CUT);
		assertEquals(List.of(JobPreparer.PICTURE_WORKED), ids());
		cure(0);
		assertTrue(prepared().element(picture.getId()).orElseThrow().has(OperationKind.CUT));
		assertEquals(List.of("bleed-missing"), ids());
		cure(0);
		assertEquals(3, picture.getBleed());
		assertEquals(List.of(), ids());
	}

	@Test
	void printedInsteadItIsLeftAlone() {
		Picture picture = disc();
		Jobs.addOperation(picture, OperationKind.CUT);
		cure(1);
		assertEquals(List.of(), ids());
		assertTrue(prepared().element(picture.getId()).orElseThrow().has(OperationKind.PRINT));
	}

	/** 400 pixels on 100 mm are 101.6 dots to the inch: 400 / (100 / 25.4). */
	@Test
	void coarseOnesAreToldWithTheirNumberAndMadeSmaller() {
		Picture picture = Jobs.addPicture(layer, RenderedArt.disc(), "image/png", 50, 37.5);
		picture.setTransform(new Matrix(0, 2, -2, 0, 50, 10));
		Finding coarse = findings().get(0);
		assertEquals("picture-coarse", coarse.id());
		assertEquals(Unit.DPI, coarse.unit());
		assertEquals(101.6, coarse.measured().orElseThrow(), 1e-9);
		assertEquals(200, coarse.limit().orElseThrow());
		cure(0);
		assertEquals(List.of(), ids());
		picture.setTransform(new Matrix(1, 0, 0, 1, 0, 0));
		picture.getOperations().clear();
		picture.setWidth(500);
		assertEquals(List.of(), ids(), "what is not printed");
	}

	/** Cuts round the disc, 1 mm outside of it, through it, and far away; a disc of 7.5 mm about (15.02, 11.30). */
	@Test
	void printNearACutIsToldAndThroughACutNeedsBleed() {
		Picture picture = disc();
		apply(picture);
		Outline cut = Jobs.addOutline(layer, ring(8.5));
		Jobs.addOperation(cut, OperationKind.CUT);
		Finding near = findings().get(0);
		assertEquals("print-near-cut", near.id());
		assertEquals(1, near.measured().orElseThrow(), 0.05);
		cut.setPathData(ring(11));
		assertEquals(List.of(), ids());
		cut.setPathData(ring(6));
		Finding through = findings().get(0);
		assertEquals("bleed-missing", through.id());
		assertEquals(1.5, through.measured().orElseThrow(), 0.05);
		cut.setPathData(ring(4));
		assertEquals(List.of(), ids(), "its own print goes on for 3.5 mm");
		cut.setPathData(ring(6));
		picture.setBleed(2);
		assertEquals(List.of(), ids());
	}

	private static void apply(Picture picture) {
		ChangePicture.edged(List.of(picture), true).apply();
	}

	private static String ring(double radius) {
		double pixel = FINE / RenderedArt.WIDTH;
		return String.format(Locale.ROOT, "M%f %fa%f %f 0 1 0 %f 0a%f %f 0 1 0 %f 0Z",
				RenderedArt.CENTRE_X * pixel - radius, RenderedArt.CENTRE_Y * pixel, radius, radius, 2 * radius, radius, radius,
				-2 * radius);
	}

	@Test
	void bareBorderIsAsWideAsTheSafeArea() {
		Picture picture = disc();
		apply(picture);
		Jobs.addOperation(picture, OperationKind.CUT);
		picture.getEdge().setBorder(1);
		assertEquals(List.of("print-near-cut"), ids());
		cure(0);
		assertEquals(3, picture.getEdge().getBorder());
		assertEquals(List.of(), ids());
	}

	@Test
	void areasInOneColourAreGivenBleedWhenTheyArePrinted() {
		Outline both = Jobs.addOutline(layer, "M0 0H30V30H0Z");
		Jobs.addOperation(both, OperationKind.PRINT);
		Jobs.addOperation(both, OperationKind.CUT);
		assertEquals(List.of(), ids());
		Outline dot = Jobs.addOutline(layer, "M1 10H4V14H1Z");
		Jobs.addOperation(dot, OperationKind.PRINT);
		assertEquals(List.of("print-near-cut"), ids());
		assertEquals(1, findings().get(0).measured().orElseThrow(), 1e-6);
	}

	@Test
	void fileBesideTheJobIsReadAndMissedAndKept(@TempDir Path folder) throws Exception {
		Files.createDirectory(folder.resolve("pictures"));
		Path image = folder.resolve("pictures/quay.png");
		Files.write(image, RenderedArt.disc().open().readAllBytes());
		Picture picture = disc();
		picture.setImage(null);
		picture.setLink("pictures/quay.png");
		assertEquals(List.of(Placeholder.PICTURE_MISSING), ids(), "a job without a file has nothing beside it");
		Path file = folder.resolve("tags.frjob");
		JobFile.save(job, file);
		Job read = JobFile.load(file);
		Finding linked = preparer.prepare(JobHome.copy(read), Tolerance.DEFAULT, Monitor.NONE).findings().get(0);
		assertEquals(Placeholder.PICTURE_LINKED, linked.id());
		assertTrue(linked.message().contains("quay.png"), linked.message());
		Files.move(image, folder.resolve("pictures/other.png"));
		Finding missing = preparer.prepare(read, Tolerance.DEFAULT, Monitor.NONE).findings().get(0);
		assertEquals(Placeholder.PICTURE_MISSING, missing.id());
		assertTrue(missing.isBlocking());
		assertTrue(missing.message().contains("quay.png"), missing.message());
		picture.setLink(folder.resolve("pictures/other.png").toString());
		assertEquals(List.of(Placeholder.PICTURE_LINKED), ids(), "an absolute one");
		assertTrue(prepared().element(picture.getId()).orElseThrow().picture().isPresent());
		cure(0);
		assertEquals(RenderedArt.disc(), picture.getImage());
		assertEquals("image/png", picture.getMediaType());
		assertEquals(List.of(), ids());
	}

	/** The address is of a test network (RFC 5737), where nothing answers; it is not even asked. */
	@Test
	void nothingIsFetchedFromElsewhere() {
		Picture picture = disc();
		picture.setImage(null);
		picture.setLink("http://192.0.2.1/quay.png");
		assertEquals(List.of(Placeholder.PICTURE_MISSING), ids());
	}
}
