package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.frisket.editing.Edit;
import org.frisket.editing.shapes.ChangePicture;
import org.frisket.editing.shapes.EdgeAsOutline;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.model.BackdropRule;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.OwnPath;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.testkit.RenderedArt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures that are worked along the contour of their art. */
class PictureEdgeTest {

	/** Width of a pixel in mm: the picture is 100 mm wide and 75 mm high. */
	private static final double PIXEL = 0.25;
	private static final double WITHIN = 0.3 * PIXEL;

	private final Job job = Jobs.create("HL-9", "Gift tags");
	private final Layer layer = Jobs.addLayer(job, "Tags");
	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());
	private Picture picture;

	@BeforeEach
	void addDisc() {
		picture = Jobs.addPicture(layer, RenderedArt.disc(), "image/png", 100, 75);
		Jobs.addOperation(picture, OperationKind.CUT);
		apply(ChangePicture.edged(List.of(picture), true));
	}

	private static void apply(Edit edit) {
		assertTrue(edit.canApply(), edit.name());
		edit.apply();
	}

	private PreparedJob prepare() {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE);
	}

	private PreparedElement prepared() {
		return prepare().element(picture.getId()).orElseThrow();
	}

	private List<String> findings() {
		return prepare().findings().stream().map(Finding::id).toList();
	}

	private static void assertDisc(Point centre, double radius, double within, List<Contour> contours) {
		assertEquals(1, contours.size());
		for (Point point : contours.get(0).flattened(0.005)) {
			assertEquals(radius, centre.distance(point), within, "at " + point);
		}
	}

	private static Point centre() {
		return new Point(RenderedArt.CENTRE_X * PIXEL, RenderedArt.CENTRE_Y * PIXEL);
	}

	@Test
	void regionIsTheContourOfTheArtAndIsCut() {
		PreparedElement prepared = prepared();
		assertDisc(centre(), RenderedArt.RADIUS * PIXEL, WITHIN, prepared.region().contours());
		assertTrue(prepared.has(OperationKind.CUT));
		assertTrue(prepared.has(OperationKind.PRINT));
		assertEquals(new Point(100, 75), prepared.picture().orElseThrow().place().apply(new Point(1, 1)));
		assertEquals(List.of(), findings());
	}

	@ParameterizedTest
	@ValueSource(ints = { 0xffffff, 0xf4ecdc, 0x202020 })
	void colourOfTheGroundMakesNoDifference(int ground) {
		picture.setImage(RenderedArt.discOn(new Color(ground)));
		assertDisc(centre(), RenderedArt.RADIUS * PIXEL, WITHIN, prepared().region().contours());
	}

	@Test
	void borderAndMatsFollowTheArt() {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 3, List.of(picture));
		apply(ChangePicture.border(List.of(picture), 2));
		assertDisc(centre(), RenderedArt.RADIUS * PIXEL + 2, WITHIN, prepared().region().contours());
		assertDisc(centre(), RenderedArt.RADIUS * PIXEL + 5, 1.5 * WITHIN,
				prepare().element(mat.getId()).orElseThrow().region().contours());
		picture.setImage(RenderedArt.bare(null));
		assertEquals(new Bounds(-3, -3, 103, 78), prepare().element(mat.getId()).orElseThrow().bounds());
	}

	/** The curves are kept in the picture's own frame: the same ones tell that it was not traced again. */
	@Test
	void isTracedAgainOnlyWhenItsEdgeIsFoundOtherwise() {
		Outline before = prepared().uncleaned().curves();
		picture.setTransform(new Matrix(0, 2, -2, 0, 50, 10));
		Jobs.addOutline(layer, "M0 0H5V5Z");
		apply(ChangePicture.bleed(List.of(picture), 3));
		PreparedElement moved = prepared();
		assertSame(before, moved.uncleaned().curves());
		assertDisc(new Point(50 - 2 * centre().y(), 10 + 2 * centre().x()), 2 * RenderedArt.RADIUS * PIXEL, 2 * WITHIN,
				moved.region().contours());
		picture.setImage(RenderedArt.disc());
		assertSame(before, prepared().uncleaned().curves(), "an equal file");
		apply(ChangePicture.smoothing(List.of(picture), 0.5));
		assertNotSame(before, prepared().uncleaned().curves());
	}

	/** Twenty times as large as it says, it would have more dots to the inch in its own frame than any picture. */
	@Test
	void smallArtThatIsDrawnIsTracedHoweverMuchItIsEnlarged() {
		picture.setImage(ImageBytes.of(("<svg xmlns='http://www.w3.org/2000/svg' width='4mm' height='2mm' viewBox='0 0 40 20'>"
				+ "<path d='M4 2H36V18H4Z'/></svg>").getBytes(StandardCharsets.UTF_8)));
		picture.setMediaType("image/svg+xml");
		picture.setWidth(4);
		picture.setHeight(2);
		picture.setTransform(new Matrix(20, 0, 0, 20, 0, 0));
		assertFalse(findings().contains("picture-edge-size"), findings().toString());
		Bounds box = prepared().region().bounds();
		assertEquals(8, box.minX(), 0.02);
		assertEquals(36, box.maxY(), 0.02);
	}

	/** Pieces may be laid apart, and each is printed where it lies. */
	@Test
	void piecesOfItPrintNoMoreThanThemselvesAndTheirBleed() {
		picture.setImage(RenderedArt.twoDiscs());
		picture.setBleed(2);
		PreparedElement all = prepared();
		assertEquals(2, all.region().pieces().size());
		assertTrue(all.printedPieces().isEmpty());
		PreparedElement one = new PreparedElement(all.element(), new Region(all.region().pieces().subList(0, 1)), List.of(),
				all.uncleaned(), false, all.xHeight(), all.findings());
		double radius = RenderedArt.RADIUS / 3 * PIXEL + 2;
		assertEquals(Math.PI * radius * radius, one.printedPieces().orElseThrow().area(), 1);
	}

	@Test
	void isCalledOffAndTracedAfterwards() {
		assertThrows(CancellationException.class, () -> preparer.prepare(job, Tolerance.DEFAULT, () -> true));
		assertFalse(prepared().region().isEmpty());
	}

	@Test
	void whereNothingIsFoundIsToldAndTheRestGoesOn() {
		picture.setImage(RenderedArt.bare(null));
		assertEquals(List.of("picture-nothing-to-trace"), findings());
		assertTrue(prepared().region().isEmpty());
		assertTrue(prepared().picture().isPresent(), "it is still there to be looked at");
		picture.setImage(RenderedArt.bare(Color.ORANGE));
		assertEquals(List.of("picture-nothing-to-trace"), findings());
		apply(ChangePicture.backdrop(List.of(picture), BackdropRule.TRANSPARENT));
		assertEquals(List.of("picture-nothing-transparent", "picture-art-at-the-edge"), findings());
		assertEquals(100 * 75, prepared().region().area(), 1);
		picture.setWidth(20_000);
		assertEquals(List.of("picture-edge-size"), findings());
	}

	/** What a hand-written file may say is not taken for more than it can be. */
	@Test
	void absurdDecisionsDoNoHarm() {
		picture.getEdge().setDifference(-5);
		picture.getEdge().setShadow(1e9);
		picture.getEdge().setSpecks(-1);
		picture.getEdge().setSmoothing(Double.NaN);
		picture.getEdge().setColour("teal");
		picture.getEdge().setBackdrop(BackdropRule.COLOUR);
		assertFalse(prepared().uncleaned().curves().isEmpty());
	}

	@Test
	void travelsInTheJobFile() throws IOException {
		apply(ChangePicture.colour(List.of(picture), "#f4ecdc"));
		apply(ChangePicture.bleed(List.of(picture), 2.5));
		Job read = JobFile.load(JobFile.toBytes(job), "tags.frjob");
		PreparedElement again = preparer.prepare(read, Tolerance.DEFAULT, Monitor.NONE).element(picture.getId()).orElseThrow();
		assertEquals(prepared().region(), again.region());
		Picture copy = (Picture) again.element();
		assertEquals(2.5, copy.getBleed());
		assertEquals(BackdropRule.COLOUR, copy.getEdge().getBackdrop());
		assertEquals("#f4ecdc", copy.getEdge().getColour());
	}

	@Test
	void edgeBecomesAnOutlineThatTakesItsPlaceForToolsAndMats() {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 3, List.of(picture));
		EdgeAsOutline edit = new EdgeAsOutline(Map.of(picture, OwnPath.of(prepared())));
		Bounds matBefore = prepare().element(mat.getId()).orElseThrow().bounds();
		apply(edit);
		PreparedElement outline = prepare().element(edit.outlines().get(0).getId()).orElseThrow();
		assertDisc(centre(), RenderedArt.RADIUS * PIXEL, WITHIN, outline.region().contours());
		assertTrue(outline.has(OperationKind.CUT));
		assertFalse(prepared().has(OperationKind.CUT));
		assertTrue(prepared().has(OperationKind.PRINT));
		assertEquals(edit.outlines(), mat.getBehind());
		assertEquals(matBefore.width(), prepare().element(mat.getId()).orElseThrow().bounds().width(), 0.02);
		edit.undo();
		assertEquals(List.of(picture), mat.getBehind());
		assertTrue(prepared().has(OperationKind.CUT));
	}

	@Test
	void anotherPictureKeepsSizeAndEdge() {
		apply(ChangePicture.border(List.of(picture), 2));
		apply(ChangePicture.replace(picture, RenderedArt.discOn(Color.WHITE), "image/png", 400, 200));
		assertEquals(100, picture.getWidth());
		assertEquals(50, picture.getHeight());
		assertEquals(2, picture.getEdge().getBorder());
	}
}
