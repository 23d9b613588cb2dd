package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.frisket.model.Element;
import org.frisket.model.Flow;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.PreviewColours;
import org.frisket.model.Wording;
import org.frisket.ui.ThemeColour;
import org.junit.jupiter.api.Test;

/** Typing wordings on the bench. */
class BenchTypingUiTest extends OpenBench {

	/** Lays a job with nothing in it on the bench in place of the sample. */
	private void openEmpty() throws Exception {
		Path empty = folder.resolve("empty.frjob");
		JobFile.save(Jobs.create("empty", "Empty"), empty);
		page().closeAllEditors(false);
		bench = open(empty);
		Screen.waitUntil("the empty job is shown", bench::isUpToDate);
		Screen.settle();
	}

	private void type(String... keys) {
		for (String key : keys) {
			Screen.key(key);
		}
	}

	private List<Wording> wordings() {
		return Jobs.elements(job()).stream().filter(Wording.class::isInstance).map(Wording.class::cast).toList();
	}

	private Wording onlyWording() {
		assertEquals(1, wordings().size());
		return wordings().get(0);
	}

	private Job job() {
		return bench.document().job();
	}

	@Test
	void wordTypedOnAnEmptyBenchIsAWording() throws Exception {
		openEmpty();
		String before = text(job());
		type("T", "i", "d", "e");
		Screen.waitUntil("the word is set", bench::isUpToDate);
		ImageData typing = Screen.picture(canvas());
		Screen.keep(typing, "typing");
		Wording wording = onlyWording();
		assertEquals("Tide", wording.getText());
		assertEquals(40, wording.getHeight());
		assertEquals("Liberation Serif", wording.getFont().getName());
		assertFalse(wording.isJoined());
		assertEquals(OperationKind.CUT, wording.getOperations().get(0).getKind());
		Layer layer = Jobs.layerOf(wording);
		assertEquals("Wording", layer.getName());
		// in the stem of the T, whose middle is that of its advance of 0.611 em (Liberation Serif, as in Times)
		double x = wording.getTransform().e() + 0.611 / 2 * 40 / 0.66;
		double y = wording.getTransform().f() - 20;
		assertColour(PreviewColours.WORDING, seenAt(typing, x, y));
		double caret = bench.typing().caret().foot().x();
		assertColour(ThemeColour.BENCH_SELECTION.colour().getRGB(), seenAt(typing, caret, y));
		type("Escape");
		assertNull(bench.typing().caret());
		assertEquals(List.of(wording.getId()), selectedIds());
		String after = text(job());
		type("ctrl+z");
		assertEquals(before, text(job()));
		assertFalse(bench.isDirty());
		assertFalse(bench.commandStack().canUndo());
		type("ctrl+shift+z");
		assertEquals(after, text(job()));
	}

	@Test
	void caretFollowsTheLettersAndMovesBetweenThem() throws Exception {
		openEmpty();
		type("T", "e");
		Screen.waitUntil("the letters are set", bench::isUpToDate);
		double end = bench.typing().caret().foot().x();
		type("Left");
		double between = bench.typing().caret().foot().x();
		assertTrue(between < end, between + " " + end);
		type("i", "d");
		assertEquals("Tide", onlyWording().getText());
		type("Home", "Right", "Delete", "i", "i", "BackSpace", "End", "Return", "w");
		assertEquals("Tide\nw", onlyWording().getText());
		Screen.waitUntil("the second line is set", bench::isUpToDate);
		assertEquals(64, bench.typing().caret().foot().y() - onlyWording().getTransform().f() - 10, 1e-9);
		type("Up", "Escape");
		assertEquals("Tide\nw", onlyWording().getText());
		type("ctrl+z");
		assertEquals(List.of(), wordings());
	}

	@Test
	void caretLeansWithItsLineOnAnArc() throws Exception {
		openEmpty();
		type("T", "i", "d");
		onlyWording().setFlow(Flow.ARC);
		onlyWording().setArcRadius(80);
		type("e");
		Screen.waitUntil("the letters are bent", bench::isUpToDate);
		org.frisket.geometry.Point end = leaning();
		type("Home");
		org.frisket.geometry.Point start = leaning();
		double turn = Math.atan2(start.cross(end), start.dot(end));
		assertTrue(turn > 0.3 && turn < 2, "turned by " + turn);
		assertEquals(start.length(), end.length(), 1e-9);
		assertEquals(1.4 * onlyWording().getHeight(), end.length(), 1e-9);
		type("End", "shift+Left", "shift+Left");
		assertEquals(2, bench.typing().rangeFigure().letters().size());
		Screen.keep(Screen.picture(canvas()), "caret-on-arc");
	}

	private org.frisket.geometry.Point leaning() {
		return bench.typing().caret().head().minus(bench.typing().caret().foot());
	}

	@Test
	void matsAreAddedWithTheCaretStillThere() throws Exception {
		openEmpty();
		type("T", "ctrl+shift+m", "ctrl+shift+m");
		assertFalse(bench.typing().isActive());
		assertEquals(List.of(6.0, 3.0), Jobs.matsOf(onlyWording()).stream().map(Mat::getDistance).toList());
		assertEquals(List.of("Mat 6 mm", "Mat 3 mm", "Wording"), job().getLayers().stream().map(Layer::getName).toList());
		Screen.waitUntil("the mats are worked through", bench::isUpToDate);
		Screen.keep(Screen.picture(canvas()), "mats");
		type("ctrl+z", "ctrl+z", "ctrl+z");
		assertEquals(0, job().getLayers().size());
	}

	@Test
	void arrowsDoNotNudgeWhileTyping() throws Exception {
		openEmpty();
		type("T", "Left", "shift+Down", "Right");
		double x = onlyWording().getTransform().e();
		type("Escape", "Right");
		assertEquals(x + 1, onlyWording().getTransform().e(), 1e-9);
	}

	@Test
	void pressElsewhereEndsTyping() throws Exception {
		openEmpty();
		type("T");
		Screen.waitUntil("the letter is set", bench::isUpToDate);
		Point below = pixelOf(100, 140);
		Screen.click(canvas(), below.x, below.y);
		assertFalse(bench.typing().isActive());
		assertEquals("T", onlyWording().getText());
		// the bench is not empty any more, so letters are no wordings
		type("x");
		assertEquals("T", onlyWording().getText());
	}

	@Test
	void wordTakenBackLetterByLetterLeavesNothing() throws Exception {
		openEmpty();
		String before = text(job());
		type("T", "i", "BackSpace", "BackSpace");
		assertEquals(before, text(job()));
		assertTrue(bench.typing().isActive());
		type("Escape");
		assertFalse(bench.isDirty());
		assertEquals(before, text(job()));
	}

	@Test
	void doubleClickOnEmptySurfaceBeginsAWordingThere() throws IOException {
		String before = text(job());
		Point place = pixelOf(30, 8);
		Screen.doubleClick(canvas(), place.x, place.y);
		assertTrue(bench.typing().isActive());
		assertEquals(before, text(job()));
		type("a");
		Wording wording = onlyWording();
		assertEquals(30, wording.getTransform().e(), 1 / bench.zoom().pixelsPerMm());
		assertEquals(8, wording.getTransform().f(), 1 / bench.zoom().pixelsPerMm());
		// no layer of the sample holds wordings
		assertEquals("Wording", Jobs.layerOf(wording).getName());
		assertEquals(3, job().getLayers().indexOf(Jobs.layerOf(wording)));
		type("Escape", "ctrl+z");
		assertEquals(before, text(job()));
	}

	@Test
	void doubleClickOnAWordingEditsItsText() throws Exception {
		openEmpty();
		type("I", "I", "Escape");
		Screen.waitUntil("the letters are set", bench::isUpToDate);
		String before = text(job());
		Wording wording = onlyWording();
		// the middle of an I, 0.333 em wide
		Point letter = pixelOf(wording.getTransform().e() + 0.333 / 2 * 40 / 0.66, wording.getTransform().f() - 20);
		Screen.doubleClick(canvas(), letter.x, letter.y);
		assertTrue(bench.typing().isActive());
		Screen.waitUntil("the caret has its places", bench::isUpToDate);
		type("n", "Escape");
		assertEquals("IIn", onlyWording().getText());
		type("F2", "BackSpace", "Escape");
		assertEquals("II", onlyWording().getText());
		type("ctrl+z", "ctrl+z");
		assertEquals(before, text(job()));
	}

	@Test
	void wordingLeftWithoutWordsIsDeleted() throws Exception {
		openEmpty();
		type("I", "Escape", "F2", "BackSpace", "Escape");
		assertEquals(List.of(), wordings());
		type("ctrl+z");
		assertEquals("I", onlyWording().getText());
	}

	@Test
	void insertKeyBeginsAWordingOnAFullBench() {
		type("Insert", "O", "k", "Escape");
		assertEquals("Ok", onlyWording().getText());
	}

	@Test
	void textIsPastedAtTheCaret() throws Exception {
		openEmpty();
		type("T");
		Clipboard clipboard = new Clipboard(canvas().getDisplay());
		clipboard.setContents(new Object[] { "i\r\nd\te" }, new Transfer[] { TextTransfer.getInstance() });
		type("ctrl+v");
		clipboard.dispose();
		assertEquals("Ti\nd e", onlyWording().getText());
		type("Escape", "ctrl+z");
		assertEquals(List.of(), wordings());
	}

	@Test
	void savingEndsTypingWithEveryLetter() throws Exception {
		openEmpty();
		type("T", "i", "ctrl+s");
		Screen.waitUntil("the job is saved", () -> !bench.isDirty());
		assertFalse(bench.typing().isActive());
		Job saved = JobFile.load(folder.resolve("empty.frjob"));
		Element element = Jobs.elements(saved).get(0);
		assertEquals("Ti", ((Wording) element).getText());
	}

	@Test
	void lockedWordingIsNotEdited() throws Exception {
		openEmpty();
		type("I", "Escape");
		Jobs.layerOf(onlyWording()).setLocked(true);
		bench.typing().edit(onlyWording());
		assertFalse(bench.typing().isActive());
	}
}
