package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.Bar;
import org.frisket.model.BarKind;
import org.frisket.model.Flow;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.Nudge;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.PenStyle;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.testkit.IndependentArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How a wording is set, held together and worked. The I of Liberation Sans is a plain bar, which makes areas known. */
class WordingStyleTest {

	private static final double HEIGHT = 20;

	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());
	private Job job;
	private Layer layer;
	private Wording wording;

	@BeforeEach
	void start() {
		job = Jobs.create("job", "Shop window alphabet");
		layer = Jobs.addLayer(job, "Lettering");
		wording = Jobs.addWording(layer, "I", HEIGHT);
		wording.setFont(Jobs.font("Liberation Sans", "Regular", null, null));
		Jobs.addOperation(wording, OperationKind.CUT);
	}

	private PreparedElement prepared(String text) {
		wording.setText(text);
		return prepared();
	}

	private PreparedElement prepared() {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE).element(wording.getId()).orElseThrow();
	}

	private static List<String> ids(PreparedElement prepared) {
		return prepared.findings().stream().map(Finding::id).toList();
	}

	private static boolean hasHoles(PreparedElement prepared) {
		return prepared.region().pieces().stream().anyMatch(piece -> !piece.holes().isEmpty());
	}

	private static Bar bar(BarKind kind, double offset, double thickness) {
		Bar bar = FrisketFactory.INSTANCE.createBar();
		bar.setKind(kind);
		bar.setOffset(offset);
		bar.setThickness(thickness);
		return bar;
	}

	private static TextSpan span(int start, int end) {
		TextSpan span = FrisketFactory.INSTANCE.createTextSpan();
		span.setStart(start);
		span.setEnd(end);
		return span;
	}

	private static Nudge nudge(int index, double dx, double turn) {
		Nudge nudge = FrisketFactory.INSTANCE.createNudge();
		nudge.setIndex(index);
		nudge.setDx(dx);
		nudge.setTurn(turn);
		return nudge;
	}

	@Test
	void emboldenedLettersGrowEvenly() {
		Bounds plain = prepared("I").bounds();
		wording.setEmbolden(0.4);
		PreparedElement heavier = prepared();
		assertEquals((plain.width() + 0.8) * (plain.height() + 0.8), heavier.region().area(), 0.05);
		wording.setEmbolden(-5);
		assertTrue(prepared().region().isEmpty());
		assertEquals(List.of("letters-vanished"), ids(prepared()));
	}

	@Test
	void featuresPrevailOverKerning() {
		double kerned = prepared("AVAV").bounds().width();
		wording.setFeatures("-kern");
		double unkerned = prepared().bounds().width();
		assertTrue(unkerned > kerned + 1, unkerned + " " + kerned);
		wording.setFeatures(null);
		wording.setKerning(false);
		assertEquals(unkerned, prepared().bounds().width(), 1e-9);
	}

	@Test
	void whatCannotBeReadIsAFinding() {
		wording.setFeatures("small caps");
		wording.setAxes("wght");
		assertEquals(List.of("axes-unreadable", "features-unreadable"), ids(prepared("I")));
		assertTrue(prepared().findings().stream().allMatch(Finding::isBlocking));
		assertFalse(prepared().region().isEmpty(), "it is set all the same");
	}

	@Test
	void wordSpacingIsAddedToEveryBlank() {
		double plain = prepared("I I I").bounds().width();
		wording.setWordSpacing(2.5);
		assertEquals(plain + 5, prepared().bounds().width(), 1e-6);
	}

	@Test
	void justifiedLinesAreAsWideAsTheMeasure() {
		wording.setAlignment(Alignment.JUSTIFY);
		wording.setMeasure(100);
		double stem = prepared("I").bounds().width();
		double advance = preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE).get(1).foot().x();
		PreparedElement set = prepared("II II II II II II II II II II II II II II");
		assertEquals(100 - (advance - stem), set.bounds().width(), 0.01);
		assertTrue(set.bounds().height() > 2 * HEIGHT, "broken into lines");
	}

	@Test
	void hatchingCoversTheAreaAndIsNeverCut() {
		double area = prepared("HO").region().area();
		double perimeter = prepared().region().perimeter();
		wording.setPenStyle(PenStyle.HATCHED);
		wording.setHatchSpacing(0.2);
		PreparedElement hatched = prepared();
		List<Contour> lines = hatched.lines().stream().filter(line -> !line.isClosed()).toList();
		assertEquals(area, 0.2 * lines.stream().mapToDouble(Contour::length).sum(), 0.01 * area);
		for (Contour line : lines) {
			Point along = line.end().minus(line.start());
			assertEquals(Math.abs(along.x()), Math.abs(along.y()), 1e-6 * line.length() + 1e-9);
			assertTrue(along.x() * along.y() > 0, "clockwise from the horizontal, y down");
		}
		assertEquals(perimeter, hatched.lines().stream().filter(Contour::isClosed).mapToDouble(Contour::length).sum(), 1e-6);
		assertTrue(hatched.region().isEmpty(), "nothing a blade could go round");
		assertEquals(List.of(), hatched.operations());
		assertFalse(hatched.has(OperationKind.CUT));
		assertEquals(List.of(JobPreparer.PEN_LETTERING_CUT), ids(hatched));
		assertTrue(hatched.findings().get(0).isBlocking());
		Jobs.addOperation(wording, OperationKind.DRAW);
		assertEquals(List.of(OperationKind.DRAW), prepared().operations().stream().map(o -> o.getKind()).toList());
		wording.getOperations().remove(0);
		assertEquals(List.of(), prepared().findings());
	}

	@Test
	void penLetteringThatIsCutCanBeDrawnInstead() {
		wording.setPenStyle(PenStyle.CENTRELINE);
		var whole = preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE);
		var trial = Makeready.trial(whole, preparer, FontLibraries.installed(), Limits.CARD, Tolerance.DEFAULT,
				Monitor.NONE);
		Cure cure = Makeready.cures(prepared().findings().get(0), trial).get(0);
		assertEquals("Draw it instead", cure.name());
		cure.edit(job).orElseThrow().apply();
		assertEquals(List.of(), prepared().findings());
		assertEquals(List.of(OperationKind.DRAW), prepared().operations().stream().map(o -> o.getKind()).toList());
	}

	@Test
	void hatchingTooFineToDrawIsAFinding() {
		wording.setPenStyle(PenStyle.HATCHED);
		for (double spacing : new double[] { 0, -1, 1e-7 }) {
			wording.setHatchSpacing(spacing);
			assertTrue(ids(prepared("HO")).contains("hatching-too-fine"), "spacing " + spacing);
			assertTrue(prepared().lines().stream().allMatch(Contour::isClosed));
		}
	}

	@Test
	void centrelineOfABarIsItsMiddle() {
		Bounds bar = prepared("I").bounds();
		wording.setPenStyle(PenStyle.CENTRELINE);
		PreparedElement drawn = prepared();
		assertEquals(1, drawn.lines().size());
		Contour line = drawn.lines().get(0);
		assertEquals(bar.height(), line.length(), 0.1);
		assertEquals(bar.centre().x(), line.start().x(), 0.05);
		assertEquals(bar.centre().x(), line.end().x(), 0.05);
		assertTrue(drawn.region().isEmpty());
	}

	@Test
	void matsFollowTheBodyOfPenLettering() {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 3, List.of(wording));
		prepared("Quay");
		var before = preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE).element(mat.getId()).orElseThrow().region();
		for (PenStyle style : List.of(PenStyle.CENTRELINE, PenStyle.HATCHED)) {
			wording.setPenStyle(style);
			assertEquals(before, preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE).element(mat.getId()).orElseThrow()
					.region());
		}
	}

	@Test
	void stencilsHaveNoIslands() {
		double area = prepared("BO8Ae").region().area();
		assertTrue(hasHoles(prepared()));
		wording.setStencil(1);
		PreparedElement stencil = prepared();
		assertFalse(hasHoles(stencil));
		assertTrue(stencil.region().area() < area && stencil.region().area() > 0.85 * area);
	}

	@Test
	void tiesHoldDotsAndWhatIsLooseIsNamed() {
		wording.setJoined(true);
		assertEquals(List.of("loose-piece", "loose-piece"), ids(prepared("ixj")));
		double area = prepared().region().area();
		wording.setTieMarks(true);
		wording.setTieWidth(1);
		PreparedElement tied = prepared();
		assertEquals(1, tied.region().pieces().size());
		assertEquals(List.of(), tied.findings());
		assertTrue(tied.region().area() > area && tied.region().area() < area + 12);
	}

	@Test
	void barsHoldLinesTogetherAndFramesStandAbout() {
		PreparedElement letters = prepared("III");
		assertEquals(3, letters.region().pieces().size());
		double stem = letters.region().area() / 3 / HEIGHT;
		wording.getBars().add(bar(BarKind.UNDERLINE, -0.5, 2));
		PreparedElement underlined = prepared();
		assertEquals(1, underlined.region().pieces().size());
		assertEquals(letters.region().area() + letters.bounds().width() * 2 - 3 * stem * 0.5, underlined.region().area(),
				0.1);
		wording.getBars().clear();
		wording.getBars().add(bar(BarKind.BASELINE, 0, 2));
		assertEquals(letters.region().area() + letters.bounds().width() * 2 - 3 * stem * 2, prepared().region().area(), 0.1);
		assertEquals(letters.bounds().height(), prepared().bounds().height(), 1e-6);
		wording.getBars().clear();
		wording.getBars().add(bar(BarKind.FRAME, 4, 1.5));
		Bounds inner = letters.bounds().grown(4);
		Bounds outer = letters.bounds().grown(5.5);
		assertEquals(letters.region().area() + outer.width() * outer.height() - inner.width() * inner.height(),
				prepared().region().area(), 0.1);
	}

	@Test
	void barsThatCannotBeSetAreFindings() {
		wording.getBars().add(bar(BarKind.UNDERLINE, 0, 2));
		wording.setFlow(Flow.STACKED);
		assertTrue(ids(prepared("III")).contains("bar-left-out"));
		wording.setFlow(Flow.STRAIGHT);
		wording.getBars().add(bar(BarKind.FRAME, -500, 2));
		wording.getBars().add(bar(BarKind.BASELINE, 0, -1));
		assertEquals(2, ids(prepared()).stream().filter("bar-left-out"::equals).count());
	}

	@Test
	void lettersStandOnTheCircle() {
		wording.setFlow(Flow.ARC);
		wording.setArcRadius(60);
		wording.setAlignment(Alignment.CENTRE);
		PreparedElement bent = prepared("IHIHI");
		for (Piece piece : bent.region().pieces()) {
			for (Point point : piece.outer().flattened(0.01)) {
				double distance = point.distance(Point.ORIGIN);
				assertTrue(distance > 59.9 && distance < 60 + HEIGHT + 2, "at " + distance);
			}
		}
		assertEquals(0, bent.bounds().centre().x(), 0.5);
		for (Point caret : preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE).stream().map(CaretPlace::foot).toList()) {
			assertEquals(60, caret.distance(Point.ORIGIN), 1e-9);
		}
		wording.setArcInside(true);
		assertTrue(prepared().region().contours().stream().flatMap(contour -> contour.flattened(0.01).stream())
				.allMatch(point -> point.distance(Point.ORIGIN) < 63));
	}

	@Test
	void circlesThatAreTooSmallAreFindings() {
		wording.setFlow(Flow.ARC);
		for (double radius : new double[] { 0, -5, 4 }) {
			wording.setArcRadius(radius);
			assertTrue(ids(prepared("I\nI\nI")).contains("arc-too-tight"), "radius " + radius);
			assertFalse(prepared().region().isEmpty());
		}
		wording.setArcRadius(10);
		assertTrue(ids(prepared("HHHHHHHH")).contains("text-overflows"));
	}

	@Test
	void stackedLettersStandBelowEachOther() {
		wording.setFlow(Flow.STACKED);
		PreparedElement stacked = prepared("HIH");
		assertEquals(3, stacked.region().pieces().size());
		assertEquals(2 * 1.6 * HEIGHT + HEIGHT, stacked.bounds().height(), 0.1);
		List<Point> carets = preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE).stream().map(CaretPlace::foot)
				.toList();
		assertEquals(4, carets.size());
		assertEquals(List.of(0.0, 32.0, 64.0, 64.0), carets.stream().map(p -> (double) Math.round(p.y())).toList());
		wording.setJoined(true);
		assertEquals(1, prepared().region().pieces().size());
	}

	@Test
	void textRunsAlongAPathWhereThatLies() {
		Outline path = Jobs.addOutline(layer, "M0 0L0 200");
		path.setTransform(new Matrix(1, 0, 0, 1, 50, 10));
		wording.setFlow(Flow.PATH);
		wording.setPath(path);
		wording.setPathStart(30);
		PreparedElement laid = prepared("HI");
		// downwards, the heads of the letters point to the right
		assertEquals(50, laid.bounds().minX(), 1e-6);
		assertEquals(50 + HEIGHT, laid.bounds().maxX(), 0.01);
		assertTrue(laid.bounds().minY() > 40 && laid.bounds().minY() < 45, laid.bounds().toString());
		assertEquals(List.of(), ids(laid));
		assertEquals(40, preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE).get(0).foot().y(), 1e-6);
		path.setPathData("M0 0L200 0");
		assertEquals(10, prepared().bounds().maxY(), 1e-6, "its content counts");
		path.setTransform(new Matrix(1, 0, 0, 1, 50, 25));
		assertEquals(25, prepared().bounds().maxY(), 1e-6, "and its place");
		wording.setPathHanging(true);
		assertEquals(25 + HEIGHT, prepared().bounds().maxY(), 0.01);
		path.setPathData("M0 0L20 0");
		assertTrue(ids(prepared()).contains("text-overflows"));
		wording.setPath(null);
		assertEquals(List.of("path-missing"), ids(prepared()));
		wording.setPath(path);
		path.setPathData("M0 0Q");
		assertTrue(ids(prepared()).contains("path-missing"));
	}

	@Test
	void spansAreSetOtherwise() {
		TextSpan span = span(1, 2);
		span.setHeight(2 * HEIGHT);
		wording.getSpans().add(span);
		assertEquals(2 * HEIGHT, prepared("II").bounds().height(), 0.01);
		span.setHeight(0);
		double thin = prepared().region().area();
		span.setFont(Jobs.font("Liberation Sans", "Bold", null, null));
		assertTrue(prepared().region().area() > 1.2 * thin);
		span.setFont(Jobs.font("Harbour Lane Grotesk", "Regular", null, null));
		assertEquals(List.of("font-missing"), ids(prepared()));
		wording.getSpans().add(span(0, 2));
		assertTrue(ids(prepared()).contains("span-unusable"));
	}

	@Test
	void nudgedLettersMove() {
		double width = prepared("II").bounds().width();
		wording.getNudges().add(nudge(1, 3, 0));
		assertEquals(width + 3, prepared().bounds().width(), 1e-6);
		wording.getNudges().add(nudge(0, 0, 90));
		assertTrue(prepared().bounds().width() > HEIGHT);
		wording.getNudges().get(0).setScale(0);
		assertEquals(List.of("nudge-unusable"), ids(prepared()));
	}

	@Test
	void boxIsFilled() {
		wording.setBoxWidth(100);
		wording.setBoxHeight(40);
		Bounds wide = prepared("HHHHHH").bounds();
		assertEquals(100, wide.width(), 1e-3);
		assertTrue(wide.height() < 40);
		wording.setEmbolden(0.5);
		assertEquals(40, prepared("I").bounds().height(), 0.03);
		wording.setBoxWidth(0.5);
		assertEquals(List.of("box-too-small"), ids(prepared()));
	}

	/** What one preparer remembers must not hide a change from it. */
	@Test
	void everyDecisionIsSeenByOnePreparer() {
		Outline path = Jobs.addOutline(layer, "M0 0C30 -40 90 -40 140 0");
		wording.setText("AVA Harbour ij\nLane fi");
		List<Consumer<Wording>> decisions = List.of(w -> w.setFeatures("-kern"), w -> w.setWordSpacing(1),
				w -> w.setMeasure(150), w -> w.setAlignment(Alignment.JUSTIFY), w -> w.setEmbolden(0.2),
				w -> w.getBars().add(bar(BarKind.UNDERLINE, 1, 1)), w -> w.getBars().get(0).setThickness(2),
				w -> w.getBars().get(0).setOverhang(2), w -> w.setTieMarks(true), w -> w.setTieWidth(2),
				w -> w.setStencil(1), w -> w.setStencil(1.5), w -> w.getSpans().add(span(0, 3)),
				w -> w.getSpans().get(0).setHeight(30), w -> w.getNudges().add(nudge(2, 1, 0)),
				w -> w.getNudges().get(0).setTurn(20), w -> w.setBoxWidth(120), w -> w.setBoxHeight(50),
				w -> w.setFlow(Flow.ARC), w -> w.setArcRadius(180), w -> w.setArcAngle(30), w -> w.setArcInside(true),
				w -> w.setArcInward(true), w -> w.setFlow(Flow.PATH), w -> w.setPath(path), w -> w.setPathStart(5),
				w -> w.setPathReversed(true), w -> path.setPathData("M0 0L200 10"), w -> w.setFlow(Flow.STACKED),
				w -> w.setPenStyle(PenStyle.HATCHED), w -> w.setHatchSpacing(2), w -> w.setHatchAngle(10),
				w -> w.setHatchInset(0.2), w -> w.setPenStyle(PenStyle.CENTRELINE));
		PreparedElement before = prepared();
		List<Integer> unseen = new ArrayList<>();
		for (int i = 0; i < decisions.size(); i++) {
			decisions.get(i).accept(wording);
			PreparedElement after = prepared();
			PreparedElement fresh = new JobPreparer(FontLibraries.installed())
					.prepare(EcoreUtil.copy(job), Tolerance.DEFAULT, Monitor.NONE).element(wording.getId()).orElseThrow();
			assertEquals(fresh.region(), after.region(), "decision " + i);
			assertEquals(fresh.lines(), after.lines(), "decision " + i);
			if (after.region().equals(before.region()) && after.lines().equals(before.lines())) {
				unseen.add(i);
			}
			before = after;
		}
		// of these there is nothing to see: half a box, a span like the rest, and a path before it is asked for
		assertEquals(List.of(12, 16), unseen.stream().filter(i -> i == 12 || i == 16).toList());
		assertTrue(unseen.size() <= 4, unseen.toString());
		assertNotEquals(0, before.lines().size());
	}

	@Test
	void areaOfBodyIsThatOfItsContours() {
		wording.setTieMarks(true);
		wording.setEmbolden(0.3);
		wording.getBars().add(bar(BarKind.UNDERLINE, -0.3, 1));
		PreparedElement body = prepared("Fjördij");
		assertEquals(IndependentArea.nonZero(body.region().contours()), body.region().area(),
				1e-3 * body.region().area(), "area by java.awt.geom");
	}
}
