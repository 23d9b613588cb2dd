package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Bounds;
import org.frisket.model.HoleRule;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.junit.jupiter.api.Test;

/** Mats and operations as lists, sliders, turns, names. */
class PropertyListsUiTest extends OpenProperties {

	private Mat mat() {
		return (Mat) element(made.mat);
	}

	private Scale slider(String name) {
		return (Scale) view.field(name + " slider");
	}

	private void keepPicture(String name) throws IOException {
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), name);
	}

	@Test
	void everythingOfAMatIsSetInItsPlace() throws IOException {
		select(made.first);
		enter("Smoothing", "0.8mm");
		assertEquals(0.8, mat().getSmoothing());
		assertOneStep();
		assertFalse(view.field("Tips").isEnabled());
		choose("Corners", "Sharp");
		assertTrue(view.field("Tips").isEnabled());
		enter("Tips", "2.5");
		assertEquals(2.5, mat().getMitreLimit());
		bench.commandStack().undo();
		assertOneStep();
		choose("Holes", "Holes filled");
		assertEquals(HoleRule.FILL, mat().getHoles());
		assertOneStep();
	}

	@Test
	void matsOfASelectedMatAreListedAndAddedBehindWhatItFollows() throws IOException {
		select(made.mat);
		press("Mats");
		List<Mat> mats = Jobs.matsOf(first());
		assertEquals(List.of(3.0, 6.0), mats.stream().map(Mat::getDistance).sorted().toList());
		mats.forEach(each -> assertEquals(List.of(first()), each.getBehind()));
		keepPicture("matList");
		assertOneStep();
	}

	@Test
	void operationsAreAddedReorderedAndLeftOut() throws IOException {
		select(made.first);
		press("Add Operation");
		assertEquals(List.of(OperationKind.CUT, OperationKind.DRAW), kinds());
		keepPicture("operationList");
		assertOneStep();
		press("Add Operation");
		press("Leave Out");
		assertEquals(List.of(OperationKind.DRAW), kinds());
		bench.commandStack().undo();
		assertOneStep();
	}

	private List<OperationKind> kinds() {
		return first().getOperations().stream().map(Operation::getKind).toList();
	}

	@Test
	void toolIsTypedForSeveralAtOnceAndLeftOpenAgain() throws IOException {
		select(made.first, made.second);
		assertEquals("by the stock", entry("Tool").getMessage());
		enter("Tool", "fine blade");
		assertEquals("fine blade", first().getOperations().get(0).getTool());
		assertEquals("fine blade", second().getOperations().get(0).getTool());
		enter("Tool", " ");
		assertNull(second().getOperations().get(0).getTool());
		bench.commandStack().undo();
		assertOneStep();
	}

	@Test
	void differingOperationsAreMixedAndSetTogether() throws IOException {
		select(made.first);
		choose("Operation", "Draw");
		String mixed = text(bench.document().job());
		select(made.first, made.second);
		assertEquals("mixed", ((Combo) view.field("Operation")).getText());
		choose("Operation", "Crease");
		assertEquals(OperationKind.CREASE, second().getOperations().get(0).getKind());
		assertEquals(List.of(OperationKind.CREASE), kinds());
		bench.commandStack().undo();
		Screen.settle();
		assertEquals(mixed, text(bench.document().job()));
	}

	@Test
	void dragOfASliderIsSeenAtOnceAndOneStep() throws IOException {
		select(made.first);
		Scale slider = slider("Tracking");
		// brings it into view
		slider.setFocus();
		Screen.settle();
		int width = slider.getSize().x;
		int y = slider.getSize().y / 2;
		int from = 6 + (width - 12) * slider.getSelection() / slider.getMaximum();
		Screen.moveTo(slider, from, y);
		Screen.pressButton();
		for (int i = 1; i <= 5; i++) {
			Screen.moveTo(slider, from + i * 6, y);
		}
		double during = first().getTracking();
		assertTrue(during > 0, "tracking " + during);
		assertFalse(bench.commandStack().canUndo());
		assertEquals(during, Double.parseDouble(entry("Tracking").getText().replace(" mm", "")), 1e-6);
		keepPicture("sliderDrag");
		Screen.releaseButton();
		assertEquals(during, first().getTracking());
		assertEquals(1, bench.commandStack().getCommands().length);
		assertOneStep();
	}

	@Test
	void arrowKeysMoveASliderOneStepEach() throws IOException {
		select(made.first);
		slider("Tracking").setFocus();
		Screen.settle();
		Screen.key("Right");
		assertEquals(0.1, first().getTracking());
		assertEquals(1, bench.commandStack().getCommands().length);
		Screen.key("Right");
		assertEquals(0.2, first().getTracking());
		bench.commandStack().undo();
		assertOneStep();
	}

	@Test
	void sliderOfAMatMovesItsDistance() throws IOException {
		select(made.first);
		slider("Distance").setFocus();
		Screen.settle();
		Screen.key("Left");
		assertEquals(2.9, mat().getDistance());
		assertOneStep();
	}

	@Test
	void lineSpacingIsSlid() throws IOException {
		select(made.first);
		slider("Line spacing").setFocus();
		Screen.settle();
		Screen.key("Right");
		assertEquals(1.65, first().getLineSpacing());
		assertOneStep();
	}

	@Test
	void turnIsTypedInDegreesAboutTheMiddle() throws IOException {
		select(made.first);
		Bounds old = bounds(made.first);
		enter("Turn", "90");
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		assertEquals(old.width(), bounds(made.first).height(), 0.1);
		assertEquals(old.centre().x(), bounds(made.first).centre().x(), 0.1);
		assertEquals("90\u00b0", entry("Turn").getText());
		assertOneStep();
		enter("Turn", "+12.5\u00b0 + 2");
		assertEquals("14.5\u00b0", entry("Turn").getText());
		assertOneStep();
	}

	@Test
	void turnIsSlidInOneStep() throws IOException {
		select(made.first);
		slider("Turn").setFocus();
		Screen.settle();
		Screen.key("Right");
		assertEquals("1\u00b0", entry("Turn").getText());
		assertOneStep();
	}

	@Test
	void severalElementsAreSizedAsOneBox() throws IOException {
		select(made.first, made.second);
		Bounds all = bounds(made.first).with(bounds(made.second));
		enter("Width", "*2");
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		Bounds now = bounds(made.first).with(bounds(made.second));
		assertEquals(2 * all.width(), now.width(), 0.1);
		assertEquals(all.minX(), now.minX(), 0.1);
		assertOneStep();
	}

	@Test
	void elementIsNamedHiddenAndLocked() throws IOException {
		select(made.first);
		assertEquals("none of its own", entry("Name").getMessage());
		enter("Name", "Shop sign");
		assertEquals("Shop sign", first().getName());
		assertOneStep();
		tick("Visible");
		assertFalse(first().isVisible());
		assertOneStep();
		select(made.first);
		tick("Locked");
		assertTrue(first().isLocked());
		assertOneStep();
	}

	@Test
	void draftIsDroppedWhenAnotherEditComes() throws IOException {
		select(made.first);
		onBench.draft().show(() -> ChangeWording.height(first(), 44));
		assertEquals(44, first().getHeight());
		edits().execute(ChangeWording.tracking(first(), 1));
		assertEquals(20, first().getHeight());
		assertEquals(1, first().getTracking());
		assertOneStep();
	}
}
