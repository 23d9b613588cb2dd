package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.graphics.ImageData;
import org.frisket.editing.Edit;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.layers.SetLayers;
import org.frisket.geometry.nodes.NodeAt;
import org.frisket.geometry.nodes.NodeKind;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Outline;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.nodes.NodeMode;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.surface.SurfaceOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The nodes of the plate and of the disc of the sample job, met with pointer and keys. */
class NodeEditingUiTest extends OpenBench {

	private String first;

	@BeforeEach
	void remember() throws IOException {
		// places are those of the pointer here, whatever is near
		SurfaceOption.SNAP.set(false);
		first = text(bench.document().job());
	}

	@AfterEach
	void restore() {
		SurfaceOption.SNAP.set(SurfaceOption.SNAP.isUsuallyOn());
	}

	private NodeMode nodes() {
		return bench.nodes();
	}

	private NodePath path(Outline original) {
		return NodePath.parse(((Outline) element(original)).getPathData());
	}

	private org.frisket.geometry.Point place(Outline original, int node) {
		return path(original).node(new NodeAt(0, node)).place();
	}

	private void click(double x, double y) {
		Point at = pixelOf(x, y);
		Screen.click(canvas(), at.x, at.y);
	}

	private void doubleClick(double x, double y) {
		Point at = pixelOf(x, y);
		Screen.doubleClick(canvas(), at.x, at.y);
	}

	private void drag(double fromX, double fromY, double toX, double toY) {
		Point from = pixelOf(fromX, fromY);
		Point to = pixelOf(toX, toY);
		Screen.drag(canvas(), from.x, from.y, to.x, to.y);
	}

	private void editPlate() {
		click(30, 30);
		Screen.key("F2");
		Screen.waitUntil("the nodes of the plate are there", nodes()::isActive);
		assertEquals(element(sample.plate), nodes().outline());
		Screen.settle();
	}

	private void editDisc() {
		click(120, 40);
		Screen.key("F2");
		Screen.waitUntil("the nodes of the disc are there", nodes()::isActive);
		Screen.settle();
	}

	private List<NodeAt> selected() {
		return nodes().selection().nodes();
	}

	private void undoAll() throws IOException {
		while (bench.commandStack().canUndo()) {
			Screen.key("ctrl+z");
		}
		assertEquals(first, text(bench.document().job()));
	}

	/** Half a step of rounding and half a pixel of the pointer. */
	private double pixel() {
		return 1.1 / bench.zoom().pixelsPerMm();
	}

	@Test
	void doubleClickShowsNodesAndEscapeHidesThem() throws IOException {
		ImageData before = Screen.picture(canvas());
		doubleClick(30, 30);
		Screen.waitUntil("the nodes of the plate are there", nodes()::isActive);
		Screen.settle();
		assertEquals(8, nodes().path().nodeCount());
		assertTrue(bench.grips().shown().isEmpty());
		ImageData during = Screen.picture(canvas());
		Screen.keep(during, "nodes");
		// the middle of a corner's mark is paper
		assertColour(ThemeColour.BENCH_SHEET.colour().getRGB(), seenAt(during, 20, 20));
		Point corner = pixelOf(20, 20);
		assertColour(ThemeColour.BENCH_SELECTION.colour().getRGB(), Screen.pixel(during, corner.x - 4, corner.y));
		Screen.key("Escape");
		assertFalse(nodes().isActive());
		assertEquals(List.of(sample.plate.getId()), selectedIds());
		assertFalse(bench.grips().shown().isEmpty());
		bench.viewer().deselectAll();
		assertEquals(Screen.pixel(before, corner.x, corner.y), seenAt(20, 20));
		assertEquals(first, text(bench.document().job()));
	}

	@Test
	void doubleClickAwayFromThePathLeaves() {
		editPlate();
		doubleClick(5, 90);
		assertFalse(nodes().isActive());
		assertFalse(bench.typing().isActive());
		// the pointer takes hold of elements again
		drag(120, 40, 130, 40);
		assertEquals(10, element(sample.disc).getTransform().e(), pixel());
	}

	@Test
	void undoWhileANodeIsDraggedGivesUpTheDrag() throws IOException {
		editPlate();
		click(20, 20);
		Screen.key("Right");
		Point from = pixelOf(21, 20);
		Screen.moveTo(canvas(), from.x, from.y);
		Screen.pressButton();
		Screen.moveTo(canvas(), from.x - 20, from.y - 20);
		Screen.key("ctrl+z");
		assertEquals("", nodes().measure());
		Screen.moveTo(canvas(), from.x - 30, from.y - 30);
		Screen.releaseButton();
		assertEquals(first, text(bench.document().job()));
		assertEquals(8, nodes().path().nodeCount());
		Screen.waitUntil("the plate is as it was", () -> bench.isUpToDate() && !isMat(14, 14));
	}

	@Test
	void keyEntersAndLeaves() {
		editDisc();
		assertEquals(4, nodes().path().nodeCount());
		Screen.key("F2");
		assertFalse(nodes().isActive());
		Screen.key("ctrl+b");
		Screen.key("n");
		assertTrue(nodes().isActive());
	}

	@Test
	void clickSelectsAndShiftAddsAndAwayDrops() {
		editPlate();
		click(20, 20);
		assertEquals(List.of(new NodeAt(0, 0)), selected());
		Point other = pixelOf(80, 60);
		Screen.holding("shift", () -> Screen.click(canvas(), other.x, other.y));
		assertEquals(List.of(new NodeAt(0, 0), new NodeAt(0, 2)), selected());
		Screen.holding("shift", () -> Screen.click(canvas(), other.x, other.y));
		assertEquals(List.of(new NodeAt(0, 0)), selected());
		click(5, 90);
		assertEquals(List.of(), selected());
		assertTrue(nodes().isActive());
	}

	@Test
	void boxSelectsNodesAndNoElements() throws IOException {
		editPlate();
		drag(35, 25, 65, 55);
		assertEquals(4, selected().size());
		assertTrue(selected().stream().allMatch(at -> at.contour() == 1));
		Screen.keep(Screen.picture(canvas()), "nodes-handles");
		assertEquals(List.of(sample.plate.getId()), selectedIds());
		Screen.key("ctrl+a");
		assertEquals(8, selected().size());
		assertEquals(first, text(bench.document().job()));
	}

	@Test
	void dragMovesANodeAndTheMatFollows() throws IOException {
		editPlate();
		drag(20, 20, 10, 12);
		assertEquals(10, place(sample.plate, 0).x(), pixel());
		assertEquals(12, place(sample.plate, 0).y(), pixel());
		assertEquals("Move node", bench.commandStack().getUndoCommand().getLabel());
		assertTrue(nodes().isActive());
		Screen.waitUntil("the mat has followed", bench::isUpToDate);
		ImageData picture = Screen.picture(canvas());
		Screen.keep(picture, "node-moved");
		assertColour(SampleJob.PLATE_COLOUR, seenAt(picture, 16, 18));
		// beyond the new corner, where there was only the sheet
		assertColour(SampleJob.MAT_COLOUR, seenAt(picture, 10.5, 9.5));
		undoAll();
		assertTrue(nodes().isActive());
		assertEquals(new org.frisket.geometry.Point(20, 20), nodes().path().node(new NodeAt(0, 0)).place());
	}

	@Test
	void pathAndMatFollowWhileTheNodeIsDragged() throws IOException {
		editPlate();
		Point from = pixelOf(20, 20);
		Point to = pixelOf(8, 14);
		Screen.moveTo(canvas(), from.x, from.y);
		Screen.pressButton();
		Screen.moveTo(canvas(), from.x - 10, from.y - 5);
		Screen.moveTo(canvas(), to.x, to.y);
		Screen.waitUntil("the plate and its mat are shown as they would be", () -> isMat(8.5, 12));
		ImageData during = Screen.picture(canvas());
		Screen.keep(during, "node-drag");
		assertTrue(nodes().measure().matches("[78]\\.\\d+, 1[34]\\.\\d+ mm"), nodes().measure());
		assertEquals(first, text(bench.document().job()));
		Screen.key("Escape");
		Screen.releaseButton();
		assertTrue(nodes().isActive());
		assertEquals("", nodes().measure());
		Screen.waitUntil("the mat is back", () -> bench.isUpToDate() && !isMat(8.5, 12));
		assertFalse(bench.isDirty());
	}

	private boolean isMat(double x, double y) {
		int rgb = Integer.parseInt(SampleJob.MAT_COLOUR.substring(1), 16);
		return Math.abs(seenAt(x, y).red - (rgb >> 16)) <= 3;
	}

	@Test
	void shiftKeepsTheDirectionOfADrag() {
		editPlate();
		Screen.holding("shift", () -> drag(80, 60, 90, 63));
		// the press with Shift takes the node in first
		assertEquals(90, place(sample.plate, 2).x(), pixel());
		assertEquals(60, place(sample.plate, 2).y());
	}

	@Test
	void handleOfASymmetricNodeMovesBoth() {
		editDisc();
		click(140, 40);
		assertEquals(List.of(new NodeAt(0, 0)), selected());
		assertEquals(NodeKind.SYMMETRIC, nodes().path().node(new NodeAt(0, 0)).kind());
		double reach = 0.5522847498 * 20;
		drag(140, 40 - reach, 148, 40 - reach);
		var node = path(sample.disc).node(new NodeAt(0, 0));
		assertEquals("Move handle", bench.commandStack().getUndoCommand().getLabel());
		assertEquals(148, node.out().x(), pixel());
		assertEquals(0, node.in().plus(node.out()).times(0.5).distance(node.place()), 1e-8);
		double out = node.out().x();
		double outY = node.out().y();
		Screen.holding("ctrl", () -> drag(out, outY, 150, 30));
		var freed = path(sample.disc).node(new NodeAt(0, 0));
		assertEquals(node.in(), freed.in());
		assertEquals(NodeKind.CORNER, nodes().path().node(new NodeAt(0, 0)).kind());
	}

	@Test
	void curveIsBentByAPointOfIt() throws IOException {
		editDisc();
		double at = 20 * Math.sqrt(0.5);
		drag(120 + at, 40 - at, 120 + at + 5, 40 - at - 5);
		assertEquals("Drag segment", bench.commandStack().getUndoCommand().getLabel());
		var on = path(sample.disc).segment(new org.frisket.geometry.nodes.SegmentAt(0, 0)).at(0.5);
		assertEquals(120 + at + 5, on.x(), 3 * pixel());
		assertEquals(new org.frisket.geometry.Point(140, 40), place(sample.disc, 0));
		undoAll();
	}

	@Test
	void arrowsNudgeNodesInAllThreeSteps() throws IOException {
		editPlate();
		click(20, 20);
		Screen.key("Right");
		assertEquals(new org.frisket.geometry.Point(21, 20), place(sample.plate, 0));
		Screen.key("shift+Down");
		assertEquals(new org.frisket.geometry.Point(21, 30), place(sample.plate, 0));
		Screen.key("ctrl+Left");
		assertEquals(new org.frisket.geometry.Point(20.9, 30), place(sample.plate, 0));
		assertEquals(new org.frisket.geometry.Point(20, 60), place(sample.plate, 1));
		assertEquals(List.of(new NodeAt(0, 0)), selected());
		undoAll();
	}

	@Test
	void doubleClickAddsANodeAndDeleteTakesItAway() throws IOException {
		editPlate();
		doubleClick(20, 40);
		assertEquals(9, nodes().path().nodeCount());
		assertEquals("Add node", bench.commandStack().getUndoCommand().getLabel());
		assertEquals(List.of(new NodeAt(0, 1)), selected());
		assertEquals(20, place(sample.plate, 1).x());
		Screen.key("Delete");
		assertEquals(8, nodes().path().nodeCount());
		assertEquals(List.of(), selected());
		undoAll();
		assertTrue(nodes().isActive());
	}

	@Test
	void insertAddsBetweenSelectedNodes() {
		editPlate();
		click(20, 40);
		assertEquals(2, selected().size());
		Screen.key("Insert");
		assertEquals(new org.frisket.geometry.Point(20, 40), place(sample.plate, 1));
	}

	@Test
	void chordsMakeSmoothSymmetricCornerCurveAndLine() throws IOException {
		editPlate();
		click(20, 20);
		chord("2");
		assertEquals(NodeKind.SMOOTH, nodes().path().node(new NodeAt(0, 0)).kind());
		assertEquals("Make node smooth", bench.commandStack().getUndoCommand().getLabel());
		Screen.waitUntil("the smooth plate is shown", bench::isUpToDate);
		Screen.keep(Screen.picture(canvas()), "node-smooth");
		chord("3");
		assertEquals(NodeKind.SYMMETRIC, nodes().path().node(new NodeAt(0, 0)).kind());
		chord("1");
		assertEquals(NodeKind.CORNER, nodes().path().node(new NodeAt(0, 0)).kind());
		click(50, 60);
		chord("5");
		assertEquals("Make curved", bench.commandStack().getUndoCommand().getLabel());
		chord("4");
		assertEquals("Make straight", bench.commandStack().getUndoCommand().getLabel());
		undoAll();
	}

	private static void chord(String key) {
		Screen.key("ctrl+b");
		Screen.key(key);
	}

	@Test
	void breakOpensAndJoinCloses() {
		editPlate();
		click(20, 60);
		chord("6");
		assertFalse(nodes().path().contours().get(0).closed());
		drag(20, 60, 25, 66);
		drag(15, 55, 30, 70);
		assertEquals(2, selected().size());
		chord("7");
		assertTrue(nodes().path().contours().get(0).closed());
	}

	@Test
	void tabGoesFromNodeToNode() {
		editPlate();
		Screen.key("Tab");
		assertEquals(List.of(new NodeAt(0, 0)), selected());
		Screen.key("Tab");
		assertEquals(List.of(new NodeAt(0, 1)), selected());
		Screen.key("shift+Tab");
		Screen.key("shift+Tab");
		assertEquals(List.of(new NodeAt(1, 3)), selected());
	}

	@Test
	void outlineWithoutNodesIsDeletedAndTheModeEnds() throws IOException {
		editDisc();
		Screen.key("ctrl+a");
		Screen.key("Delete");
		assertTrue(Jobs.element(bench.document().job(), sample.disc.getId()).isEmpty());
		assertFalse(nodes().isActive());
		undoAll();
	}

	@Test
	void undoDropsNodesThatAreGoneFromTheSelection() {
		editPlate();
		doubleClick(20, 40);
		Screen.holding("shift", () -> click(80, 60));
		assertEquals(2, selected().size());
		Screen.key("ctrl+z");
		assertEquals(List.of(new NodeAt(0, 2)), selected());
		Screen.key("ctrl+shift+z");
		assertEquals(List.of(new NodeAt(0, 3)), selected());
	}

	@Test
	void modeFollowsAnElementThatIsMovedElsewhere() {
		editPlate();
		edits().execute(new MoveElements(List.of(element(sample.plate)), 7, 9));
		assertTrue(nodes().isActive());
		click(27, 29);
		assertEquals(List.of(new NodeAt(0, 0)), selected());
		drag(27, 29, 37, 29);
		assertEquals(30, place(sample.plate, 0).x(), pixel());
	}

	@Test
	void modeEndsWhenTheElementGoesOrIsLockedOrHidden() {
		Layer layer = Jobs.layerOf(element(sample.plate));
		for (Edit edit : List.of(new DeleteElements(List.of(element(sample.plate))),
				SetLayers.locked(List.of(layer), true), SetLayers.visible(List.of(layer), false))) {
			nodes().begin((Outline) element(sample.plate));
			assertTrue(nodes().isActive());
			edits().execute(edit);
			assertFalse(nodes().isActive(), edit.name());
			bench.commandStack().undo();
			assertFalse(nodes().isActive(), edit.name());
		}
	}

	@Test
	void lockedOutlineShowsNoNodes() {
		edits().execute(SetLayers.locked(List.of(Jobs.layerOf(element(sample.plate))), true));
		nodes().begin((Outline) element(sample.plate));
		assertFalse(nodes().isActive());
	}

	@Test
	void modeEndsWhenAnotherElementIsSelectedElsewhere() {
		editPlate();
		Selection.select(bench.viewer(), List.of(element(sample.disc)));
		assertFalse(nodes().isActive());
		// the keys mean what they did
		Screen.key("Right");
		assertEquals(1, element(sample.disc).getTransform().e());
	}

	@Test
	void menuOffersWhatCanBeDone() throws Exception {
		editPlate();
		click(20, 20);
		Point at = pixelOf(20, 20);
		Screen.rightClick(canvas(), at.x, at.y);
		Screen.keepScreen("node-menu");
		Screen.key("Down");
		Screen.key("Return");
		Screen.waitUntil("a node was added by the menu", () -> nodes().path().nodeCount() == 9);
	}

	@Test
	void turnedAndStretchedOutlineIsEditedWhereItIsSeen() {
		edits().execute(TransformElements.rotate(List.of(element(sample.plate)), Math.PI / 2, 50, 40));
		edits().execute(TransformElements.scale(List.of(element(sample.plate)), 1.2, 0.8, 50, 40));
		Screen.waitUntil("the plate is turned", bench::isUpToDate);
		nodes().begin((Outline) element(sample.plate));
		// the corner (20, 20) came to (70, 10) and then to (74, 16)
		drag(74, 16, 84, 10);
		assertEquals("Move node", bench.commandStack().getUndoCommand().getLabel());
		var matrix = element(sample.plate).getTransform();
		var corner = place(sample.plate, 0);
		assertEquals(84, matrix.a() * corner.x() + matrix.c() * corner.y() + matrix.e(), pixel());
		assertEquals(10, matrix.b() * corner.x() + matrix.d() * corner.y() + matrix.f(), pixel());
		var next = place(sample.plate, 1);
		assertEquals(new org.frisket.geometry.Point(20, 60), next);
	}

	@Test
	void typingEndsTheMode() {
		editPlate();
		bench.typing().begin();
		assertFalse(nodes().isActive());
		Screen.key("a");
		assertEquals("a", bench.typing().text());
		bench.typing().end(true);
	}

	@Test
	void unreadablePathSaysWhyAndShowsNoNodes() {
		Outline outline = (Outline) element(sample.plate);
		outline.setPathData("M 0 0 L x");
		nodes().begin(outline);
		assertFalse(nodes().isActive());
	}
}
