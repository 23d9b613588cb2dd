package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.ui.PlatformUI;
import org.frisket.model.TextSpan;
import org.frisket.ui.bench.TextRange;
import org.junit.jupiter.api.Test;

/** Letters selected in a wording that is typed, and set otherwise than the rest. */
class LetterSelectionUiTest extends OpenProperties {

	private void edit() {
		select(made.first);
		listen(bench);
		Screen.key("F2");
		Screen.waitUntil("the caret has its places", bench::isUpToDate);
		Screen.settle();
	}

	private void keys(String... keys) {
		for (String key : keys) {
			Screen.key(key);
		}
	}

	private String selected() {
		return bench.typing().range().map(r -> r.wording().getText().substring(r.start(), r.end())).orElse("");
	}

	@Test
	void shiftSelectsAndTypingReplaces() throws IOException {
		edit();
		keys("Home", "shift+Right", "shift+Right", "shift+Right");
		assertEquals("Har", selected());
		assertEquals(3, bench.typing().rangeFigure().letters().size());
		keys("shift+Left");
		assertEquals("Ha", selected());
		keys("Right");
		assertEquals("", selected());
		keys("shift+End", "x");
		assertEquals("Hax", first().getText());
		keys("ctrl+a");
		assertEquals("Hax", selected());
		keys("BackSpace", "Q", "Escape");
		assertEquals("Q", first().getText());
		assertOneStep();
	}

	@Test
	void lettersAreCutCopiedAndPasted() throws IOException {
		edit();
		keys("shift+Home", "ctrl+c", "End", "ctrl+v");
		assertEquals("HarbourHarbour", first().getText());
		keys("ctrl+shift+Left", "ctrl+x");
		assertEquals("", first().getText());
		keys("ctrl+v");
		assertEquals("HarbourHarbour", first().getText());
		keys("Escape");
		assertOneStep();
	}

	@Test
	void pointerSelectsLettersAndAWord() throws IOException {
		edit();
		List<org.frisket.geometry.Point> veil = veilOfAll();
		double y = veil.get(0).y() + (veil.get(2).y() - veil.get(0).y()) * 0.6;
		Point from = pixelOf(veil.get(0).x(), y);
		Point to = pixelOf(veil.get(1).x(), y);
		keys("Home");
		Screen.moveTo(canvas(), from.x + 1, from.y);
		Screen.pressButton();
		Screen.moveTo(canvas(), (from.x + to.x) / 2, from.y);
		Screen.moveTo(canvas(), to.x + 1, from.y);
		Screen.releaseButton();
		assertEquals("H", selected());
		assertTrue(bench.typing().isActive());
		assertEquals(before, text(bench.document().job()));
		Screen.doubleClick(canvas(), (from.x + to.x) / 2, from.y);
		assertEquals("Harbour", selected());
		assertTrue(bench.typing().isActive());
		Screen.keep(Screen.picture(canvas()), "lettersSelected");
	}

	private List<org.frisket.geometry.Point> veilOfAll() {
		keys("ctrl+a");
		return bench.typing().rangeFigure().letters().get(0);
	}

	@Test
	void selectedLettersGetAHeightOfTheirOwn() throws IOException {
		edit();
		keys("Home", "shift+Right");
		assertEquals(new TextRange(first(), 0, 1), onBench.textRange().orElseThrow());
		assertTrue(view.heading().startsWith("1 of 7 letters"), view.heading());
		assertFalse(view.section("Spacing").isVisible());
		assertEquals("20 mm", entry("Capital height").getText());
		Screen.click(entry("Capital height"), 20, 8);
		enter("Capital height", "30mm");
		assertEquals(List.of("0-1 30.0"), spans());
		assertTrue(bench.typing().isActive(), "the caret stays");
		assertEquals("H", selected());
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "span");
		enter("Features", "smcp");
		listen(bench);
		keys("shift+Right");
		assertEquals("", entry("Capital height").getText());
		Screen.click(entry("Capital height"), 20, 8);
		enter("Capital height", "*2");
		assertEquals(List.of("0-1 60.0 smcp", "1-2 40.0"), spans());
		press("Set as the Rest");
		assertEquals(List.of(), spans());
		for (int i = 0; i < 3; i++) {
			bench.commandStack().undo();
		}
		assertOneStep();
	}

	private List<String> spans() {
		return first().getSpans().stream().map(LetterSelectionUiTest::text).toList();
	}

	private static String text(TextSpan span) {
		return span.getStart() + "-" + span.getEnd() + " " + span.getHeight()
				+ (span.getFeatures() == null ? "" : " " + span.getFeatures());
	}
}
