package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.stream.Collectors;

import org.eclipse.draw2d.geometry.Point;
import org.frisket.editing.arranging.AddGuide;
import org.frisket.geometry.nodes.NodeAt;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.model.Outline;
import org.frisket.ui.bench.internal.figures.TagFigure;
import org.frisket.ui.bench.internal.nodes.PenTool;
import org.frisket.ui.bench.internal.surface.SurfaceOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What holds nodes, handles and the points of the pen. */
class PathSnapUiTest extends OpenBench {

	/** Well within reach, and further than any rounding. */
	private static final int NEAR_PX = 3;

	@AfterEach
	void restore() {
		bench.nodes().end();
		bench.viewer().getEditDomain().loadDefaultTool();
		for (SurfaceOption option : SurfaceOption.values()) {
			option.set(option.isUsuallyOn());
		}
		Screen.settle();
	}

	private void addGuide(boolean across, double at) {
		edits().execute(new AddGuide(bench.document().job(), across, at));
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
	}

	private void editNodes(Outline original) {
		bench.nodes().begin((Outline) element(original));
		assertTrue(bench.nodes().isActive());
		Screen.settle();
	}

	private org.frisket.geometry.Point place(Outline original, int node) {
		return NodePath.parse(((Outline) element(original)).getPathData()).node(new NodeAt(0, node)).place();
	}

	private void press(Point from, Point to) {
		Screen.moveTo(canvas(), from.x, from.y);
		Screen.pressButton();
		for (int i = 1; i <= 5; i++) {
			Screen.moveTo(canvas(), from.x + (to.x - from.x) * i / 5, from.y + (to.y - from.y) * i / 5);
		}
	}

	private void takePen() {
		PenTool.take(bench.viewer());
	}

	private PenTool pen() {
		return (PenTool) bench.viewer().getEditDomain().getActiveTool();
	}

	private Point near(double x, double y) {
		return pixelOf(x, y).getTranslated(NEAR_PX, -NEAR_PX);
	}

	private String hint() {
		return tags().stream().map(TagFigure::getText).collect(Collectors.joining("|"));
	}

	@Test
	void nodeDraggedNearAGuideLandsOnIt() throws IOException {
		addGuide(false, 8.37);
		String before = text(bench.document().job());
		editNodes(sample.plate);
		Point to = pixelOf(8.37, 33);
		press(pixelOf(20, 20), to.getTranslated(NEAR_PX, 0));
		Screen.keep(Screen.picture(canvas()), "node-held-by-guide");
		assertTrue(hint().contains("Guide"), hint());
		Screen.releaseButton();
		assertEquals(8.37, place(sample.plate, 0).x());
		assertEquals("", hint());
		Screen.key("ctrl+z");
		assertEquals(before, text(bench.document().job()));
	}

	@Test
	void altLetsTheNodeGoAndTheGuideHoldsItAgain() {
		addGuide(false, 8.37);
		editNodes(sample.plate);
		Point to = pixelOf(8.37, 33).getTranslated(NEAR_PX, 0);
		press(pixelOf(20, 20), to);
		Screen.holding("alt", () -> {
			assertFalse(hint().contains("Guide"), hint());
			assertFalse(bench.nodes().measure().contains("8.37"), bench.nodes().measure());
		});
		assertTrue(hint().contains("Guide"), hint());
		Screen.holding("alt", Screen::releaseButton);
		assertTrue(place(sample.plate, 0).x() > 8.37 + 2 / bench.zoom().pixelsPerMm());
	}

	@Test
	void shiftHoldsAlongItsDirectionOnly() {
		addGuide(false, 8.37);
		addGuide(true, 21);
		editNodes(sample.plate);
		press(pixelOf(20, 20), pixelOf(8.37, 20).getTranslated(NEAR_PX, 2));
		Screen.holding("shift", Screen::releaseButton);
		assertEquals(8.37, place(sample.plate, 0).x());
		assertEquals(20, place(sample.plate, 0).y());
	}

	@Test
	void nodeIsHeldByTheOtherNodesOfItsPathAndNotByItself() {
		editNodes(sample.plate);
		Point start = pixelOf(20, 20);
		// far enough to be a drag, and back to where its old place would hold it
		press(start, start.getTranslated(5 * NEAR_PX, 5 * NEAR_PX));
		Screen.moveTo(canvas(), start.x + NEAR_PX, start.y + NEAR_PX);
		Screen.releaseButton();
		assertTrue(place(sample.plate, 0).x() > 20, place(sample.plate, 0).toString());
		Screen.key("ctrl+z");
		Screen.waitUntil("the plate is back", bench::isUpToDate);
		press(start, near(80, 60));
		assertTrue(hint().contains("Node"), hint());
		Screen.releaseButton();
		assertEquals(new org.frisket.geometry.Point(80, 60), place(sample.plate, 0));
	}

	@Test
	void handleLandsOnTheCornerOfAnotherElement() {
		editNodes(sample.disc);
		Point node = pixelOf(140, 40);
		Screen.click(canvas(), node.x, node.y);
		org.frisket.geometry.Point in = NodePath.parse(((Outline) element(sample.disc)).getPathData())
				.node(new NodeAt(0, 0)).in();
		press(pixelOf(in.x(), in.y()), near(80, 20));
		Screen.releaseButton();
		assertEquals(new org.frisket.geometry.Point(80, 20),
				NodePath.parse(((Outline) element(sample.disc)).getPathData()).node(new NodeAt(0, 0)).in());
	}

	@Test
	void nothingHoldsANodeWhenSwitchedOff() {
		addGuide(false, 8.37);
		SurfaceOption.SNAP.set(false);
		editNodes(sample.plate);
		press(pixelOf(20, 20), pixelOf(8.37, 33).getTranslated(NEAR_PX, 0));
		Screen.releaseButton();
		assertTrue(place(sample.plate, 0).x() > 8.37 + 2 / bench.zoom().pixelsPerMm());
	}

	@Test
	void penPointNearACornerOfAnElementLandsOnIt() throws IOException {
		takePen();
		Point corner = near(80, 60);
		Screen.moveTo(canvas(), corner.x - 1, corner.y);
		Screen.moveTo(canvas(), corner.x, corner.y);
		Screen.keep(Screen.picture(canvas()), "pen-held-by-node");
		assertTrue(hint().contains("Node"), hint());
		Screen.click(canvas(), corner.x, corner.y);
		assertEquals(new org.frisket.geometry.Point(80, 60), pen().drawn().last().place());
		Point next = near(80, 20);
		Screen.click(canvas(), next.x, next.y);
		assertEquals(new org.frisket.geometry.Point(80, 20), pen().drawn().last().place());
		Point free = near(20, 20);
		Screen.moveTo(canvas(), free.x, free.y);
		assertTrue(hint().contains("Node"), hint());
		Screen.holding("alt", () -> assertFalse(hint().contains("|"), hint()));
		// the window manager keeps a press with Alt for itself
		Screen.holding("ctrl", () -> Screen.click(canvas(), free.x, free.y));
		assertTrue(pen().drawn().last().place().distance(new org.frisket.geometry.Point(20, 20)) > 2
				/ bench.zoom().pixelsPerMm());
		Screen.key("Escape");
		assertEquals("", hint());
	}

	@Test
	void penIsHeldByItsOwnEarlierNodes() {
		takePen();
		for (Point each : new Point[] { pixelOf(5, 70), pixelOf(13, 78), pixelOf(33, 73) }) {
			Screen.holding("ctrl", () -> Screen.click(canvas(), each.x, each.y));
		}
		org.frisket.geometry.Point second = pen().drawn().nodes().get(1).place();
		Point near = near(second.x(), second.y());
		Screen.click(canvas(), near.x, near.y);
		assertEquals(second, pen().drawn().last().place());
	}

	@Test
	void penForgetsAGuideThatIsHidden() {
		addGuide(false, 8.37);
		takePen();
		Point at = pixelOf(8.37, 90).getTranslated(NEAR_PX, 0);
		Screen.moveTo(canvas(), at.x, at.y);
		assertTrue(hint().contains("Guide"), hint());
		SurfaceOption.GUIDES.set(false);
		Screen.moveTo(canvas(), at.x, at.y + 1);
		assertFalse(hint().contains("Guide"), hint());
	}
}
