package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Bounds;
import org.frisket.model.Alignment;
import org.frisket.model.CornerJoin;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.ui.LengthText;
import org.junit.jupiter.api.Test;

/** The properties of the selection, typed, chosen and ticked. */
class PropertiesViewUiTest extends OpenProperties {

	@Test
	void placeIsTypedWithItsUnit() throws IOException {
		select(made.first);
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "properties");
		enter("From left", "1in");
		assertEquals(25.4, bounds(made.first).minX(), 0.01);
		assertEquals("25.4 mm", entry("From left").getText());
		assertOneStep();
	}

	@Test
	void sumIsAddedToThePlace() throws IOException {
		select(made.first);
		double top = bounds(made.first).minY();
		enter("From top", "+12.5mm");
		assertEquals(top + 12.5, bounds(made.first).minY(), 1e-6);
		assertOneStep();
	}

	@Test
	void widthScalesInProportion() throws IOException {
		select(made.first);
		Bounds old = bounds(made.first);
		enter("Width", "*2");
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		assertEquals(2 * old.width(), bounds(made.first).width(), 0.05);
		assertEquals(2 * old.height(), bounds(made.first).height(), 0.05);
		assertEquals(old.minX(), bounds(made.first).minX(), 0.05);
		assertOneStep();
	}

	@Test
	void heightAloneStretchesWhenProportionsAreNotKept() throws IOException {
		select(made.first);
		Bounds old = bounds(made.first);
		tick("Keep proportions");
		enter("Height", "50mm");
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		assertEquals(50, bounds(made.first).height(), 0.05);
		assertEquals(old.width(), bounds(made.first).width(), 0.05);
		tick("Keep proportions");
		assertOneStep();
	}

	@Test
	void wrongInputIsMarkedWithTheReasonAndChangesNothing() throws IOException {
		select(made.first);
		enter("Width", "40 ells");
		assertEquals(before, text(bench.document().job()));
		assertEquals("40 ells", entry("Width").getText());
		assertTrue(labels(entry("Width").getParent()).anyMatch(label -> label.contains("ells")));
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "wrongInput");
		Screen.key("Escape");
		assertFalse(entry("Width").getText().contains("ells"));
		assertFalse(labels(entry("Width").getParent()).anyMatch(label -> label.contains("ells")));
		assertFalse(bench.commandStack().canUndo());
	}

	@Test
	void absurdSizeIsRefused() throws IOException {
		select(made.first);
		enter("Capital height", "99999999mm");
		assertEquals(before, text(bench.document().job()));
		assertTrue(labels(entry("Capital height").getParent()).anyMatch(label -> label.startsWith("No more than")));
	}

	@Test
	void textIsTakenWhenTheFieldIsLeft() throws IOException {
		select(made.first);
		type("Text", "Quay");
		entry("Capital height").setFocus();
		Screen.settle();
		assertEquals("Quay", first().getText());
		assertOneStep();
	}

	@Test
	void overlongTextIsRefused() throws IOException {
		select(made.first);
		entry("Text").setFocus();
		entry("Text").setText("x".repeat(20_001));
		Screen.key("ctrl+Return");
		assertEquals(before, text(bench.document().job()));
		assertTrue(labels(entry("Text").getParent()).anyMatch(label -> label.contains("20000")));
	}

	@Test
	void keysOfTheTextMeanTheTextAndNotTheBench() {
		select(made.first);
		entry("Text").setFocus();
		Screen.settle();
		Screen.key("ctrl+a");
		assertEquals(List.of(made.first.getId()), selectedIds());
		Screen.key("Delete");
		assertEquals("", entry("Text").getText());
		assertTrue(Jobs.element(bench.document().job(), made.first.getId()).isPresent());
	}

	@Test
	void settingIsOneStepEach() throws IOException {
		select(made.first);
		enter("Capital height", "1.5cm");
		assertEquals(15, first().getHeight());
		assertOneStep();
		enter("Line spacing", "2,25");
		assertEquals(2.25, first().getLineSpacing());
		assertOneStep();
		enter("Tracking", "-0.4");
		assertEquals(-0.4, first().getTracking());
		assertOneStep();
		choose("Lines", "Centred");
		assertEquals(Alignment.CENTRE, first().getAlignment());
		assertOneStep();
		tick("Kerning");
		assertFalse(first().isKerning());
		assertOneStep();
		tick("Ligatures");
		assertFalse(first().isLigatures());
		assertOneStep();
		tick("Join letters");
		assertTrue(first().isJoined());
		assertOneStep();
		enter("Touch", "0.5");
		assertTrue(first().isJoined());
		assertEquals(0.5, first().getTouch());
		assertOneStep();
	}

	@Test
	void severalElementsShowWhatTheyShareAndAreSetTogether() throws IOException {
		select(made.first, made.second);
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "several");
		assertEquals("", entry("Capital height").getText());
		assertEquals("mixed", entry("Capital height").getMessage());
		assertEquals("0 mm", entry("Tracking").getText());
		enter("Capital height", "18mm");
		assertEquals(18, first().getHeight());
		assertEquals(18, second().getHeight());
		assertOneStep();
		enter("Capital height", "+1mm");
		assertEquals(21, first().getHeight());
		assertEquals(13, second().getHeight());
		assertOneStep();
	}

	@Test
	void matIsAddedSetAndRemoved() throws IOException {
		select(made.first);
		assertEquals("3 mm", entry("Distance").getText());
		enter("Distance", "4mm");
		assertEquals(4, ((Mat) element(made.mat)).getDistance());
		assertOneStep();
		choose("Corners", "Sharp");
		assertEquals(CornerJoin.MITRE, ((Mat) element(made.mat)).getCorners());
		assertOneStep();
		press("Mats");
		assertEquals(List.of(3.0, 6.0), Jobs.matsOf(first()).stream().map(Mat::getDistance).sorted().toList());
		assertOneStep();
		press("Remove");
		assertEquals(List.of(), Jobs.matsOf(first()));
		assertEquals(1, bench.document().job().getLayers().size());
		assertOneStep();
	}

	@Test
	void operationAndPassesAreSet() throws IOException {
		select(made.first, made.second);
		choose("Operation", "Draw");
		assertEquals(OperationKind.DRAW, first().getOperations().get(0).getKind());
		assertEquals(OperationKind.DRAW, second().getOperations().get(0).getKind());
		assertOneStep();
		enter("Passes", "3");
		assertEquals(3, second().getOperations().get(0).getPasses());
		assertOneStep();
		enter("Passes", "2.5");
		assertEquals(before, text(bench.document().job()));
	}

	@Test
	void fieldsFollowTheJob() {
		select(made.first);
		edits().execute(ChangeWording.height(first(), 33));
		Screen.settle();
		assertEquals("33 mm", entry("Capital height").getText());
		bench.commandStack().undo();
		Screen.settle();
		assertEquals("20 mm", entry("Capital height").getText());
	}

	@Test
	void viewTeachesWhenNothingIsSelectedOrOpen() {
		onBench.select(List.of());
		Screen.settle();
		assertTrue(view.note().startsWith("Nothing is selected"), view.note());
		page().closeAllEditors(false);
		Screen.waitUntil("the view is empty", () -> view.note().startsWith("Open a job"));
	}

	private String measure(String name) {
		return ((Label) view.field(name)).getText();
	}

	/** Folded out by key, measured in the background, and again after an edit; a bar of an I is as wide as it says. */
	@Test
	void measuresOfTheSelectionAreShown() throws IOException {
		view.setFolded("Measures", true);
		select(made.second);
		assertTrue(view.isFolded("Measures"));
		view.section("Measures").setFocus();
		Screen.key("space");
		assertFalse(view.isFolded("Measures"));
		Screen.waitUntil("it is measured", () -> measure("Pieces").equals("4"));
		assertEquals("2", measure("Holes"));
		onBench.edits().execute(ChangeWording.text(second(), "I"));
		Screen.waitUntil("it is measured again", () -> bench.isUpToDate() && measure("Pieces").equals("1"));
		assertEquals("0", measure("Holes"));
		assertEquals("4", measure("Nodes"));
		assertEquals("90\u00b0", measure("Sharpest tip"));
		Bounds bar = onBench.bounds(onBench.selection());
		assertEquals(LengthText.of(2 * (bar.width() + bar.height())), measure("Length of contours"));
		assertEquals(LengthText.size(bar.height(), bar.width()), measure("Smallest box"));
		assertEquals("none", measure("Narrowest gap"));
		Screen.keep(Screen.picture(view.section("Measures").getParent().getParent()), "properties-measures");
		select(made.first, made.second);
		Screen.waitUntil("both are measured", () -> measure("Pieces").equals("8"));
		bench.commandStack().undo();
		view.setFolded("Measures", true);
	}
}
