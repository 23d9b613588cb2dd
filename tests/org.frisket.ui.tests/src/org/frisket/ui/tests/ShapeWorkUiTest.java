package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Region;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.Element;
import org.frisket.model.FrameKind;
import org.frisket.model.HoleRule;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.WeedLines;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.ElementText;
import org.frisket.ui.views.internal.properties.PropertiesView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Combining, splitting, rounding and weeding by their keys, and all that is set of it, each undone to the first bytes. */
class ShapeWorkUiTest extends OpenProperties {

	private final Job job = Jobs.create("shapes", "Gift tags");
	private Outline plate;
	private Outline disc;
	private Outline line;
	private Mat mat;

	/** A plate of 60 × 40, a disc of radius 20 over its right edge, a line across both, a mat behind the plate. */
	@Override
	@BeforeEach
	protected void openProperties() throws Exception {
		view = (PropertiesView) page().showView(Views.PROPERTIES_ID);
		mat = Jobs.addMat(layer("Mat", "#5b3a57"), 4, List.of());
		plate = outline(layer("Plate", "#1f6f78"), "M20 20V60H80V20Z", OperationKind.CUT);
		disc = outline(layer("Disc", "#d9a441"), SampleJob.circle(80, 40, 20, false), OperationKind.CUT);
		line = outline(Jobs.layerOf(disc), "M10 45C40 20 60 70 110 40", OperationKind.CREASE);
		mat.getBehind().add(plate);
		Jobs.addOperation(mat, OperationKind.CUT);
		JobFile.save(job, folder.resolve("shapes.frjob"));
		bench = open(folder.resolve("shapes.frjob"));
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		onBench = Adapters.adapt(bench, JobOnBench.class);
		before = text(bench.document().job());
		page().activate(bench);
		listen(bench);
	}

	private Layer layer(String name, String colour) {
		Layer layer = Jobs.addLayer(job, name);
		layer.setColour(colour);
		return layer;
	}

	private static Outline outline(Layer layer, String path, OperationKind kind) {
		Outline outline = Jobs.addOutline(layer, path);
		Jobs.addOperation(outline, kind);
		return outline;
	}

	/** The strokes of a two-stroke key, on the bench. */
	private void strike(String second) {
		page().activate(bench);
		listen(bench);
		Screen.events("key", "ctrl+g", second);
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
	}

	private void keepPicture(String name) throws IOException {
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), name);
	}

	@SuppressWarnings("unchecked")
	private <T extends Element> T selected() {
		List<Element> selected = Selection.elements(bench.viewer());
		assertEquals(1, selected.size(), selected.toString());
		return (T) selected.get(0);
	}

	private double area(Element element) {
		return region(element).area();
	}

	private Region region(Element element) {
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		return bench.document().picture().prepared().element(element.getId()).orElseThrow().region();
	}

	@Test
	void fourRulesHaveTheirKeys() throws IOException {
		double half = Math.PI * 200;
		double square = 60 * 40;
		for (var each : List.of(new Object[] { "u", CombinationRule.UNITE, square + half },
				new Object[] { "s", CombinationRule.SUBTRACT, square - half },
				new Object[] { "i", CombinationRule.INTERSECT, half },
				new Object[] { "e", CombinationRule.EXCLUDE, square })) {
			select(disc, plate);
			strike((String) each[0]);
			Combination made = selected();
			assertEquals(each[1], made.getRule());
			assertEquals(List.of(element(plate), element(disc)), made.getParts(), "the lowest first");
			assertEquals((double) each[2], area(made), 2);
			keepPicture("combined-" + each[0]);
			assertOneStep();
		}
	}

	@Test
	void combinationFollowsAndItsPartsAreReorderedAndTakenOut() throws IOException {
		select(plate, disc);
		strike("s");
		Combination made = selected();
		String combined = text(bench.document().job());
		assertEquals("Subtraction", ElementText.of(made));
		assertEquals("Subtraction", view.heading());
		press("2  First");
		assertEquals(List.of(element(disc), element(plate)), made.getParts());
		assertEquals(Math.PI * 200, area(made), 2);
		choose("Rule", "Union");
		assertEquals(CombinationRule.UNITE, made.getRule());
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		click(60, 40);
		assertEquals(List.of(disc.getId()), selectedIds(), "by its line");
		click(90, 40);
		assertEquals(List.of(made.getId()), selectedIds(), "through its part");
		enter("Rounded by", "2mm");
		assertEquals(2, made.getCornerRadius());
		press("1  Take Out");
		assertEquals(List.of(element(plate)), made.getParts());
		assertTrue(((Control) view.field("1  Take Out")).getParent().isVisible());
		for (int i = 0; i < 4; i++) {
			bench.commandStack().undo();
		}
		Screen.settle();
		assertEquals(combined, text(bench.document().job()));
		page().activate(bench);
		listen(bench);
		Screen.key("Delete");
		assertFalse(Jobs.elements(bench.document().job()).contains(made));
		bench.commandStack().undo();
		assertOneStep();
	}

	private void click(double x, double y) {
		Point place = pixelOf(x, y);
		Screen.click(canvas(), place.x, place.y);
	}

	@Test
	void lineSplitsWhatIsSelectedWithIt() throws IOException {
		select(line, plate, disc);
		strike("l");
		List<Element> halves = Selection.elements(bench.viewer());
		assertEquals(List.of("Left of the line", "Right of the line"), halves.stream().map(ElementText::of).toList());
		assertEquals(60 * 40 + Math.PI * 200, area(halves.get(0)) + area(halves.get(1)), 3);
		keepPicture("split");
		assertOneStep();
		select(plate, disc);
		strike("l");
		assertFalse(bench.commandStack().canUndo(), "no line");
	}

	@Test
	void cornersAreRoundedAndMadeSharpAgain() throws IOException {
		select(plate);
		strike("r");
		assertEquals(3, ((Outline) element(plate)).getCornerRadius());
		assertEquals(2400 - (4 - Math.PI) * 9, area(element(plate)), 1);
		keepPicture("rounded");
		strike("r");
		assertEquals(0, ((Outline) element(plate)).getCornerRadius());
		bench.commandStack().undo();
		assertOneStep();
		enter("Rounded by", "5");
		assertEquals(5, ((Outline) element(plate)).getCornerRadius());
		assertOneStep();
	}

	@Test
	void weedLinesAreAddedAndSet() throws IOException {
		select(plate, disc);
		strike("w");
		WeedLines lines = selected();
		assertEquals(new Bounds(15, 15, 105, 65), box(lines));
		bench.commandStack().undo();
		assertEquals(before, text(bench.document().job()));
		bench.commandStack().redo();
		select(lines);
		enter("Strips", "12");
		enter("Margin", "8mm");
		enter("Clearance", "1");
		tick("Lines between parts");
		assertEquals(List.of(12.0, 8.0, 1.0), List.of(lines.getSpacing(), lines.getMargin(), lines.getClearance()));
		assertFalse(lines.isBetween());
		assertEquals(new Bounds(12, 12, 108, 68), box(lines));
		bench.viewer().deselectAll();
		assertColour(ThemeColour.BENCH_SHEET.colour().getRGB(), seenAt(15, 15));
		keepPicture("weedLines");
		for (int i = 0; i < 4; i++) {
			bench.commandStack().undo();
		}
		assertOneStep();
	}

	private Bounds box(Element element) {
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		Bounds box = bench.document().picture().prepared().element(element.getId()).orElseThrow().bounds();
		return new Bounds(Math.rint(box.minX()), Math.rint(box.minY()), Math.rint(box.maxX()), Math.rint(box.maxY()));
	}

	private Mat mat() {
		return (Mat) element(mat);
	}

	@Test
	void matsGetTheirShapes() throws IOException {
		select(mat);
		assertFalse(view.field("Widest mouth").isVisible());
		choose("Shape", "Taut hull");
		assertEquals(MatForm.CONVEX_HULL, mat().getForm());
		assertOneStep();
		choose("Shape", "Hull with hollows");
		enter("Widest mouth", "15");
		assertEquals(15, mat().getReach());
		bench.commandStack().undo();
		assertOneStep();
		choose("Shape", "Shadow");
		enter("Falls right", "6");
		enter("Falls down", "-2");
		assertEquals(List.of(6.0, -2.0), List.of(mat().getShadowX(), mat().getShadowY()));
		assertEquals(new Bounds(16, 14, 90, 64), box(mat()));
		keepPicture("matShadow");
		bench.commandStack().undo();
		bench.commandStack().undo();
		assertOneStep();
	}

	@Test
	void matsBecomeFramesWithRoundCornersAndSmallHolesFilled() throws IOException {
		select(mat);
		choose("Shape", "Frame");
		choose("Frame", "Ellipse");
		assertEquals(FrameKind.ELLIPSE, mat().getFrameKind());
		choose("Frame", "Rectangle");
		enter("Frame margin", "3mm");
		enter("Frame width", "4mm");
		enter("Corner radius", "6");
		assertEquals(List.of(3.0, 4.0, 6.0),
				List.of(mat().getFrameMargin(), mat().getFrameWidth(), mat().getCornerRadius()));
		// the distance of 4 mm is added to the margin
		assertEquals(new Bounds(9, 9, 91, 71), box(mat()));
		keepPicture("matFrame");
		for (int i = 0; i < 5; i++) {
			bench.commandStack().undo();
		}
		assertOneStep();
		choose("Holes", "Small holes filled");
		enter("Smallest hole", "2.5mm");
		assertEquals(HoleRule.FILL_SMALL, mat().getHoles());
		assertEquals(2.5, mat().getSmallestHole());
		bench.commandStack().undo();
		assertOneStep();
	}

	@Test
	void creaseIsBrokenIntoDashes() throws IOException {
		select(line);
		enter("Dash", "5");
		enter("Gap", "3");
		assertEquals(5, element(line).getOperations().get(0).getDash());
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		assertEquals(1, bench.document().picture().element(line.getId()).dashes().size());
		bench.viewer().deselectAll();
		keepPicture("dashes");
		select(line);
		bench.commandStack().undo();
		assertOneStep();
		select(plate);
		assertFalse(view.field("Dash").isVisible(), "a cut has none");
	}
}
