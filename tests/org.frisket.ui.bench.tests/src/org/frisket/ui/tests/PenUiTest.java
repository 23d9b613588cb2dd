package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.geometry.nodes.SegmentAt;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.ui.bench.internal.nodes.PenTool;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Drawing paths with the pen, on a bench with nothing else on it. */
class PenUiTest extends OpenBench {

	private String first;

	@Override
	protected Path jobFile() throws IOException {
		Path empty = folder.resolve("empty.frjob");
		JobFile.save(Jobs.create("empty", "Empty"), empty);
		return empty;
	}

	@BeforeEach
	void takePen() throws Exception {
		first = text(job());
		press("ctrl+b", "8");
		assertTrue(pen().drawn().isEmpty());
	}

	private PenTool pen() {
		return (PenTool) bench.viewer().getEditDomain().getActiveTool();
	}

	private boolean isDown() {
		return !(bench.viewer().getEditDomain().getActiveTool() instanceof PenTool);
	}

	private Job job() {
		return bench.document().job();
	}

	private void press(String... keys) {
		for (String key : keys) {
			Screen.key(key);
		}
	}

	private void click(double x, double y) {
		Point at = pixelOf(x, y);
		Screen.click(canvas(), at.x, at.y);
	}

	private void drag(double fromX, double fromY, double toX, double toY) {
		Point from = pixelOf(fromX, fromY);
		Point to = pixelOf(toX, toY);
		Screen.drag(canvas(), from.x, from.y, to.x, to.y);
	}

	private Outline only() {
		List<Element> all = Jobs.elements(job());
		assertEquals(1, all.size());
		return (Outline) all.get(0);
	}

	private NodePath path() {
		return NodePath.parse(only().getPathData());
	}

	private double pixel() {
		return 1.1 / bench.zoom().pixelsPerMm();
	}

	private void assertUndone() throws IOException {
		press("ctrl+z");
		assertEquals(first, text(job()));
		assertFalse(bench.commandStack().canUndo());
	}

	@Test
	void triangleClosedOnItsFirstNodeIsCut() throws IOException {
		click(40, 40);
		click(100, 40);
		click(70, 90);
		Point start = pixelOf(40, 40);
		Screen.moveTo(canvas(), start.x, start.y);
		Screen.keep(Screen.picture(canvas()), "pen-close");
		click(40, 40);
		assertTrue(isDown());
		assertEquals(3, path().nodeCount());
		assertTrue(path().contours().get(0).closed());
		assertEquals(OperationKind.CUT, only().getOperations().get(0).getKind());
		assertEquals(List.of(only().getId()), selectedIds());
		Screen.waitUntil("the triangle is shown", bench::isUpToDate);
		assertColour(Jobs.layerOf(only()).getColour(), seenAt(70, 60));
		assertUndone();
	}

	@Test
	void dragsMakeCurvesAndEnterEndsOpenAndDrawn() throws IOException {
		drag(40, 80, 40, 50);
		drag(100, 40, 120, 40);
		Point next = pixelOf(140, 90);
		Screen.moveTo(canvas(), next.x, next.y);
		Screen.keep(Screen.picture(canvas()), "pen-curve");
		click(140, 90);
		press("Return");
		assertTrue(isDown());
		assertEquals(3, path().nodeCount());
		assertFalse(path().contours().get(0).closed());
		Cubic curve = (Cubic) path().segment(new SegmentAt(0, 0));
		assertEquals(50, curve.control1().y(), pixel());
		assertEquals(80, curve.control2().x(), 2 * pixel());
		assertEquals(OperationKind.DRAW, only().getOperations().get(0).getKind());
		assertUndone();
	}

	@Test
	void curveIsClosedByADragOnItsFirstNode() throws IOException {
		drag(50, 60, 50, 30);
		drag(110, 60, 110, 90);
		drag(50, 60, 50, 30);
		assertTrue(isDown());
		assertTrue(path().contours().get(0).closed());
		assertTrue(path().outline().contours().get(0).segments().stream().allMatch(Cubic.class::isInstance));
		assertUndone();
	}

	@Test
	void doubleClickEndsOpenWithoutADoubleNode() {
		click(40, 40);
		click(100, 40);
		Point end = pixelOf(100, 80);
		Screen.doubleClick(canvas(), end.x, end.y);
		assertTrue(isDown());
		assertEquals(3, path().nodeCount());
		assertFalse(bench.nodes().isActive());
	}

	@Test
	void shiftKeepsToEighthsOfATurn() {
		click(40, 40);
		Screen.holding("shift", () -> click(100, 46));
		Screen.holding("shift", () -> click(140, 90));
		press("Return");
		var nodes = path().contours().get(0).nodes();
		assertEquals(nodes.get(0).place().y(), nodes.get(1).place().y());
		var way = nodes.get(2).place().minus(nodes.get(1).place());
		assertEquals(way.x(), way.y(), 1e-9);
	}

	@Test
	void backspaceTakesTheLastNodeBack() {
		click(40, 40);
		click(100, 40);
		click(100, 80);
		press("BackSpace");
		assertEquals(2, pen().drawn().nodes().size());
		click(70, 90);
		press("Return");
		assertEquals(3, path().nodeCount());
		assertEquals(70, path().node(new org.frisket.geometry.nodes.NodeAt(0, 2)).place().x(), pixel());
	}

	@Test
	void undoTakesANodeBackBeforeAnyEdit() throws IOException {
		click(40, 40);
		click(100, 40);
		press("Return");
		String drawn = text(job());
		press("ctrl+b", "8");
		click(40, 80);
		click(100, 80);
		press("ctrl+z");
		assertEquals(1, pen().drawn().nodes().size());
		assertEquals(drawn, text(job()));
		press("ctrl+z", "ctrl+z");
		assertEquals(first, text(job()));
	}

	@Test
	void escapeGivesAllUp() throws IOException {
		click(40, 40);
		click(100, 40);
		press("Escape");
		assertTrue(isDown());
		assertEquals(first, text(job()));
		assertFalse(bench.isDirty());
	}

	@Test
	void enterOnOneNodeDoesNothing() throws IOException {
		click(40, 40);
		press("Return");
		assertFalse(isDown());
		assertEquals(first, text(job()));
	}

	@Test
	void lettersBeginNoWordingWhileThePenIsUp() {
		press("a");
		assertFalse(bench.typing().isActive());
		press("Escape", "a");
		assertTrue(bench.typing().isActive());
		bench.typing().end(false);
	}
}
