package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.frisket.model.Nudge;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.ui.bench.internal.letters.LetterMode;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.picture.PictureMaker;
import org.frisket.ui.bench.internal.surface.SurfaceOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Single letters of a word with a mat behind it, met with pointer and keys. */
class LettersUiTest extends OpenBench {

	private final WordingJob words = new WordingJob();
	private String first;

	@Override
	@BeforeEach
	protected void openSample() throws Exception {
		super.openSample();
		// places are those of the pointer here, whatever is near
		SurfaceOption.SNAP.set(false);
		bench = open(words.save(folder.resolve("words.frjob")));
		Screen.waitUntil("the words are worked through", bench::isUpToDate);
		listen(bench);
		first = text(bench.document().job());
		Selection.select(bench.viewer(), List.of(wording()));
		beginByKeys();
		Screen.waitUntil("the letters are there", () -> letters().letters().size() == 7);
		Screen.settle();
	}

	/** Both strokes at once, or a loaded machine may take longer between them than any hand. */
	private void beginByKeys() {
		Screen.waitUntil("the bench has the keys", () -> canvas().isFocusControl());
		Screen.events("key", "ctrl+b", "e");
	}

	@AfterEach
	void restore() {
		SurfaceOption.SNAP.set(SurfaceOption.SNAP.isUsuallyOn());
	}

	private LetterMode letters() {
		return bench.letters();
	}

	private Wording wording() {
		return (Wording) element(words.first);
	}

	private Point pixel(org.frisket.geometry.Point mm) {
		return pixelOf(mm.x(), mm.y());
	}

	private Point middle(int number) {
		LetterPlace letter = letters().letters().get(number);
		return pixel(PictureMaker.transform(wording().getTransform()).apply(letter.middle()));
	}

	private void click(int number) {
		Screen.click(canvas(), middle(number).x, middle(number).y);
	}

	private void drag(Point from, int right, int down) {
		Screen.drag(canvas(), from.x, from.y, from.x + right, from.y + down);
		Screen.waitUntil("the picture has followed", bench::isUpToDate);
	}

	private Nudge onlyNudge() {
		assertEquals(1, wording().getNudges().size());
		return wording().getNudges().get(0);
	}

	private void undoAll() throws IOException {
		while (bench.commandStack().canUndo()) {
			Screen.key("ctrl+z");
		}
		assertEquals(first, text(bench.document().job()));
	}

	@Test
	void dragMovesALetterAndGripsTurnAndScaleIt() throws Exception {
		double step = 1.1 / bench.zoom().pixelsPerMm();
		var before = bench.document().picture();
		click(1);
		assertEquals(List.of(1), letters().choice().starts());
		Screen.keep(Screen.picture(canvas()), "letters");
		Point was = middle(1);
		drag(was, 12, -18);
		Nudge nudge = onlyNudge();
		assertEquals(1, nudge.getIndex());
		assertEquals(12 / bench.zoom().pixelsPerMm(), nudge.getDx(), step);
		assertEquals(-18 / bench.zoom().pixelsPerMm(), nudge.getDy(), step);
		assertFalse(before.equals(bench.document().picture()));
		assertTrue(Math.abs(was.x + 12 - middle(1).x) <= 2 && Math.abs(was.y - 18 - middle(1).y) <= 2);
		Point turn = pixel(letters().turnGrip().orElseThrow());
		drag(turn, middle(1).y - turn.y < 0 ? -60 : 60, middle(1).y - turn.y);
		assertTrue(nudge.getTurn() > 60 && nudge.getTurn() < 120, "turned by " + nudge.getTurn());
		Point scale = pixel(letters().scaleGrip().orElseThrow());
		drag(scale, scale.x - middle(1).x, scale.y - middle(1).y);
		assertEquals(2, nudge.getScale(), 0.1);
		Screen.keep(Screen.picture(canvas()), "letters-nudged");
		Screen.key("Delete");
		assertEquals(List.of(), wording().getNudges());
		assertEquals(7, wording().getText().length());
		undoAll();
		assertTrue(letters().isActive());
		Screen.key("Escape");
		assertFalse(letters().isActive());
		assertEquals(List.of(words.first.getId()), selectedIds());
	}

	@Test
	void keysWalkMoveTurnAndScaleSeveral() throws Exception {
		Screen.key("Tab");
		assertEquals(List.of(0), letters().choice().starts());
		Screen.key("shift+Tab");
		assertEquals(List.of(6), letters().choice().starts());
		Screen.key("alt+Left");
		assertEquals(List.of(5), letters().choice().starts());
		Screen.holding("shift", () -> click(2));
		assertEquals(List.of(5, 2), letters().choice().starts());
		Screen.key("Right");
		Screen.key("shift+Up");
		Screen.key("ctrl+Down");
		Screen.key("ctrl+shift+Right");
		Screen.key("ctrl+shift+Home");
		Screen.key("ctrl+shift+Prior");
		assertEquals(2, wording().getNudges().size());
		for (Nudge nudge : wording().getNudges()) {
			assertEquals(1, nudge.getDx(), 1e-9);
			assertEquals(-10 + 0.1, nudge.getDy(), 1e-9);
			assertEquals(-14, nudge.getTurn(), 1e-9);
			assertEquals(1.1, nudge.getScale(), 1e-9);
		}
		undoAll();
		assertEquals(List.of(5, 2), letters().choice().starts());
	}

	@Test
	void keysChooseAllPutBackAndLeave() throws Exception {
		Screen.key("ctrl+a");
		assertEquals(7, letters().choice().starts().size());
		Screen.key("Left");
		Screen.key("ctrl+shift+Left");
		Screen.key("ctrl+shift+Up");
		assertEquals(7, wording().getNudges().size());
		Screen.key("Delete");
		assertEquals(List.of(), wording().getNudges());
		undoAll();
		Screen.key("Escape");
		assertFalse(letters().isActive());
		// a slow hand, for which the list of second keys comes up
		Screen.key("ctrl+b");
		Screen.rest(1500);
		Screen.key("e");
		Screen.waitUntil("the letters are there again", () -> letters().letters().size() == 7);
	}
}
