package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.Edit;
import org.frisket.editing.elements.AddElement;
import org.frisket.editing.wording.ChangeFlow;
import org.frisket.geometry.Bounds;
import org.frisket.model.Flow;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.grips.FlowGrip;
import org.frisket.ui.bench.internal.parts.Selection;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a wording runs along or is fitted into, by dragging: the letters follow, and it is one step. */
class FlowGripUiTest extends OpenBench {

	private final WordingJob words = new WordingJob();
	private Wording wording;

	@Override
	protected Path jobFile() throws IOException {
		return words.save(folder.resolve("flow.frjob"));
	}

	@BeforeEach
	void selectWords() {
		wording = (Wording) element(words.first);
		Selection.select(bench.viewer(), List.of(wording));
		Screen.settle();
	}

	private void worked() {
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
	}

	private void make(Edit edit) {
		bench.commandStack().execute(new EditCommand(edit));
		worked();
	}

	private Bounds letters() {
		return bench.document().picture().element(wording.getId()).bounds();
	}

	private Point grip(FlowGrip grip) {
		return bench.flowGrips().shown().get(grip).getAccessibleLocation();
	}

	private int pixels(double mm) {
		return (int) Math.round(mm * bench.zoom().pixelsPerMm());
	}

	/** Presses a grip, moves it, and waits until the letters are seen elsewhere. */
	private void pull(FlowGrip grip, double dx, double dy) {
		Point at = grip(grip);
		Bounds before = letters();
		Screen.moveTo(canvas(), at.x, at.y);
		Screen.pressButton();
		Screen.moveTo(canvas(), at.x + pixels(dx) / 2, at.y + pixels(dy) / 2);
		Screen.moveTo(canvas(), at.x + pixels(dx), at.y + pixels(dy));
		Screen.waitUntil("the letters follow the pointer", () -> !letters().equals(before));
		worked();
	}

	private void keepPicture(String name) throws IOException {
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), name);
	}

	private void assertOneStep(String before) throws IOException {
		assertNotEquals(before, text(bench.document().job()));
		bench.commandStack().undo();
		assertEquals(before, text(bench.document().job()));
	}

	private String onArc() throws IOException {
		make(ChangeFlow.to(wording, Flow.ARC, Matrix.translation(60, 90)));
		assertEquals(Set.of(FlowGrip.ARC), bench.flowGrips().shown().keySet());
		return text(bench.document().job());
	}

	private String onPath() throws IOException {
		Outline wall = FrisketFactory.INSTANCE.createOutline();
		wall.setName("Harbour wall");
		wall.setPathData("M10 150C60 100 120 190 190 140");
		make(new AddElement(Jobs.layerOf(wording), wall));
		make(ChangeFlow.along(wording, wall));
		bench.fit();
		Selection.select(bench.viewer(), List.of(wording));
		Screen.settle();
		assertEquals(Set.of(FlowGrip.PATH), bench.flowGrips().shown().keySet());
		return text(bench.document().job());
	}

	private String inBox() throws IOException {
		make(ChangeFlow.box(wording, 60, 40));
		assertEquals(Set.of(FlowGrip.BOX_WIDTH, FlowGrip.BOX_HEIGHT), bench.flowGrips().shown().keySet());
		assertEquals(60, letters().width(), 0.01);
		return text(bench.document().job());
	}

	@Test
	void straightWordingHasNoSuchGrip() {
		assertEquals(Set.of(), bench.flowGrips().shown().keySet());
	}

	@Test
	void arcBendsAsItsGripIsDragged() throws IOException {
		String before = onArc();
		double radius = wording.getArcRadius();
		pull(FlowGrip.ARC, 0, -20);
		assertTrue(tags().get(0).getText().startsWith("Radius " + Math.round(radius + 20)), tags().get(0).getText());
		keepPicture("arcDrag");
		assertEquals(before, text(bench.document().job()), "the job is changed when the button is let go");
		Bounds shown = letters();
		Screen.releaseButton();
		worked();
		assertEquals(radius + 20, wording.getArcRadius(), 0.5);
		assertEquals(0, wording.getArcAngle());
		assertEquals(shown, letters(), "what was shown is what came of it");
		assertOneStep(before);
	}

	@Test
	void escapeBringsTheLettersBack() throws IOException {
		String before = onArc();
		Bounds letters = letters();
		pull(FlowGrip.ARC, 15, -10);
		Screen.key("Escape");
		Screen.waitUntil("the letters are back", () -> letters().equals(letters));
		Screen.releaseButton();
		assertEquals(before, text(bench.document().job()));
		assertEquals(List.of(), tags());
	}

	@Test
	void wordingSlidesAlongItsPath() throws IOException {
		String before = onPath();
		Point at = grip(FlowGrip.PATH);
		pull(FlowGrip.PATH, 40, 8);
		assertTrue(tags().get(0).getText().startsWith("Start "), tags().get(0).getText());
		keepPicture("pathDrag");
		assertEquals(before, text(bench.document().job()));
		Screen.releaseButton();
		worked();
		assertTrue(wording.getPathStart() > 30 && wording.getPathStart() < 60, "start " + wording.getPathStart());
		assertTrue(Math.abs(grip(FlowGrip.PATH).x - at.x - pixels(40)) < pixels(12), "the grip is near the pointer");
		assertOneStep(before);
	}

	@Test
	void wordingIsFittedToTheWidthOfItsBox() throws IOException {
		String before = inBox();
		double left = letters().minX();
		Point at = grip(FlowGrip.BOX_WIDTH);
		pull(FlowGrip.BOX_WIDTH, 30, 3);
		assertTrue(tags().get(0).getText().matches("(89|90).*40.*"), tags().get(0).getText());
		keepPicture("boxDrag");
		assertEquals(before, text(bench.document().job()));
		Screen.releaseButton();
		worked();
		assertEquals(90, wording.getBoxWidth(), 0.5);
		assertEquals(40, wording.getBoxHeight());
		assertEquals(wording.getBoxWidth(), letters().width(), 0.01);
		assertEquals(left, letters().minX(), 1, "the other side stays");
		assertEquals(at.x + pixels(30), grip(FlowGrip.BOX_WIDTH).x, pixels(1) + 2, "the grip is where it was let go");
		assertOneStep(before);
	}

	@Test
	void boxIsMadeLowerThanItsLettersWere() throws IOException {
		String before = inBox();
		pull(FlowGrip.BOX_HEIGHT, 0, -32);
		Screen.releaseButton();
		worked();
		assertEquals(8, wording.getBoxHeight(), 0.5);
		assertEquals(60, wording.getBoxWidth());
		assertEquals(wording.getBoxHeight(), letters().height(), 0.01);
		assertOneStep(before);
	}

	@Test
	void gripsAreAwayWhileLettersAreNudged() throws IOException {
		onArc();
		bench.letters().begin(wording);
		assertEquals(Set.of(), bench.flowGrips().shown().keySet());
		bench.letters().end();
		assertEquals(Set.of(FlowGrip.ARC), bench.flowGrips().shown().keySet());
	}
}
