package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.elements.GroupElements;
import org.frisket.editing.layers.MoveLayer;
import org.frisket.editing.layers.SetLayers;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.stack.StackCanvas;
import org.frisket.ui.views.internal.stack.StackView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Elements, groups and threads in the stack, met by pointer and keys. */
class StackElementsUiTest extends OpenBench {

	private StackCanvas stack;
	private String first;

	@BeforeEach
	void openStack() throws Exception {
		// room for all rows
		page().hideView(page().findView(Views.TYPE_CASE_ID));
		stack = ((StackView) page().showView(Views.STACK_ID)).canvas();
		Screen.settle();
		first = text(bench.document().job());
	}

	@AfterEach
	void bringTheTypeCaseBack() throws Exception {
		page().showView(Views.TYPE_CASE_ID);
		Screen.settle();
	}

	private Layer layer(String name) {
		return bench.document().job().getLayers().stream().filter(layer -> name.equals(layer.getName())).findFirst()
				.orElseThrow();
	}

	private Mat mat() {
		return (Mat) element(sample.mat);
	}

	private void click(Element element) {
		Rectangle place = stack.boundsOf(element);
		Screen.click(stack, place.x + 90, place.y + place.height / 2);
	}

	private void clickLayer(String name) {
		Rectangle place = stack.boundsOf(layer(name));
		Screen.click(stack, place.x + 90, place.y + 10);
	}

	private void assertUndoneIn(int steps) throws IOException {
		assertEquals(steps, bench.commandStack().getCommands().length);
		for (int i = 0; i < steps; i++) {
			bench.commandStack().undo();
		}
		assertEquals(first, text(bench.document().job()));
	}

	@Test
	void elementIsDraggedToAnotherLayerInOneStep() throws IOException {
		Rectangle from = stack.boundsOf(element(sample.disc));
		Rectangle to = stack.boundsOf(element(sample.plate));
		Screen.drag(stack, 100, from.y + from.height / 2, 100, to.y + 3);
		assertEquals(List.of(sample.plate.getId(), sample.disc.getId()),
				layer("Plate").getElements().stream().map(Element::getId).toList());
		assertTrue(layer("Disc").getElements().isEmpty());
		assertEquals(List.of(sample.disc.getId()), selectedIds());
		assertEquals(2, mat().getBehind().size());
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		assertColour(SampleJob.PLATE_COLOUR, seenAt(120, 40));
		assertUndoneIn(1);
	}

	@Test
	void elementIsDraggedBelowAnother() throws IOException {
		Rectangle from = stack.boundsOf(element(sample.disc));
		Rectangle to = stack.boundsOf(element(sample.plate));
		Screen.drag(stack, 100, from.y + from.height / 2, 100, to.y + to.height - 3);
		assertEquals(List.of(sample.disc.getId(), sample.plate.getId()),
				layer("Plate").getElements().stream().map(Element::getId).toList());
		assertUndoneIn(1);
	}

	@Test
	void elementDroppedOnALayerLiesOnItsTop() throws IOException {
		Rectangle from = stack.boundsOf(element(sample.plate));
		Rectangle to = stack.boundsOf(layer("Disc"));
		Screen.drag(stack, 100, from.y + from.height / 2, 100, to.y + 10);
		assertEquals(List.of(sample.disc.getId(), sample.plate.getId()),
				layer("Disc").getElements().stream().map(Element::getId).toList());
		assertUndoneIn(1);
	}

	@Test
	void escapeLeavesADraggedElementWhereItWas() throws IOException {
		Rectangle from = stack.boundsOf(element(sample.disc));
		Screen.moveTo(stack, 100, from.y + from.height / 2);
		Screen.pressButton();
		Screen.moveTo(stack, 100, from.y + from.height + 30);
		Screen.keep(Screen.picture(stack), "stack-drag");
		Screen.key("Escape");
		Screen.releaseButton();
		assertUndoneIn(0);
	}

	@Test
	void lockedLayerTakesNothing() throws IOException {
		edits().execute(SetLayers.locked(List.of(layer("Plate")), true));
		Screen.settle();
		Rectangle from = stack.boundsOf(element(sample.disc));
		Rectangle to = stack.boundsOf(element(sample.plate));
		Screen.drag(stack, 100, from.y + from.height / 2, 100, to.y + 3);
		assertUndoneIn(1);
	}

	@Test
	void keysCarryAnElementThroughTheLayers() throws IOException {
		click(element(sample.plate));
		Screen.key("alt+Up");
		assertEquals(List.of(sample.plate.getId(), sample.disc.getId()),
				layer("Disc").getElements().stream().map(Element::getId).toList());
		Screen.key("alt+Up");
		assertEquals(List.of(sample.disc.getId(), sample.plate.getId()),
				layer("Disc").getElements().stream().map(Element::getId).toList());
		Screen.key("alt+Up");
		assertEquals(List.of(sample.plate.getId()), selectedIds());
		Screen.key("alt+Down");
		Screen.key("alt+Down");
		assertEquals(List.of(sample.plate.getId()), layer("Plate").getElements().stream().map(Element::getId).toList());
		assertUndoneIn(4);
	}

	@Test
	void pulledThreadChangesTheStepOfTheMatInOneStep() throws IOException {
		Rectangle bead = stack.beadOf(mat());
		int x = bead.x + bead.width / 2;
		int y = bead.y + bead.height / 2;
		Screen.moveTo(stack, x, y);
		Screen.pressButton();
		Screen.moveTo(stack, x, y + 10);
		Screen.moveTo(stack, x, y + 25);
		assertEquals(SampleJob.MAT_DISTANCE + 2.5, mat().getDistance(), 1e-9);
		Screen.waitUntil("the mat has followed", bench::isUpToDate);
		assertColour(SampleJob.MAT_COLOUR, seenAt(20 - SampleJob.MAT_DISTANCE - 1.5, 40));
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "thread-pulled");
		Screen.releaseButton();
		assertEquals(SampleJob.MAT_DISTANCE + 2.5, mat().getDistance(), 1e-9);
		assertUndoneIn(1);
	}

	@Test
	void shiftPullsFinelyAndEscapeGivesUp() throws IOException {
		Rectangle bead = stack.beadOf(mat());
		int x = bead.x + bead.width / 2;
		int y = bead.y + bead.height / 2;
		Screen.holding("shift", () -> {
			Screen.moveTo(stack, x, y);
			Screen.pressButton();
			Screen.moveTo(stack, x, y - 7);
		});
		assertEquals(SampleJob.MAT_DISTANCE - 0.07, mat().getDistance(), 1e-9);
		Screen.key("Escape");
		Screen.releaseButton();
		assertEquals(SampleJob.MAT_DISTANCE, mat().getDistance(), 0);
		assertUndoneIn(0);
	}

	@Test
	void threadOfALockedMatHolds() throws IOException {
		edits().execute(SetLayers.locked(List.of(layer("Mat")), true));
		Screen.settle();
		Rectangle bead = stack.beadOf(mat());
		Screen.drag(stack, bead.x + 4, bead.y + 4, bead.x + 4, bead.y + 34);
		assertUndoneIn(1);
	}

	@Test
	void elementIsRenamedInItsPlaceAndCalledByWhatItIsAgain() throws IOException {
		click(element(sample.disc));
		Screen.key("Return");
		Screen.type("Sun");
		Screen.key("Return");
		assertEquals("Sun", element(sample.disc).getName());
		Screen.key("F2");
		Screen.key("BackSpace");
		Screen.key("Return");
		assertNull(element(sample.disc).getName());
		assertUndoneIn(2);
	}

	@Test
	void doubleClickRenamesAnElement() throws IOException {
		Rectangle place = stack.boundsOf(element(sample.disc));
		Screen.doubleClick(stack, 100, place.y + place.height / 2);
		Screen.type("Moon");
		Screen.key("Return");
		assertEquals("Moon", element(sample.disc).getName());
		assertUndoneIn(1);
	}

	/** Two clicks in quick succession at one place, and in between another element comes there. */
	@Test
	void twoClicksOnDifferentRowsAreNoDoubleClick() throws IOException {
		Rectangle place = stack.boundsOf(element(sample.disc));
		Listener once = new Listener() {

			@Override
			public void handleEvent(Event event) {
				stack.removeListener(SWT.MouseUp, this);
				edits().execute(new MoveLayer(Jobs.layerOf(element(sample.disc)), 0));
			}
		};
		stack.addListener(SWT.MouseUp, once);
		int[] doubles = { 0 };
		stack.addListener(SWT.MouseDoubleClick, event -> doubles[0]++);
		Screen.doubleClick(stack, 100, place.y + place.height / 2);
		assertEquals(1, doubles[0], "to the platform it is one");
		assertFalse(place.equals(stack.boundsOf(element(sample.disc))), "the row has moved");
		assertTrue(stack.isFocusControl(), "no name is edited");
		assertUndoneIn(1);
	}

	@Test
	void eyeAndPinOfAnElementHideAndLockIt() throws IOException {
		Rectangle place = stack.boundsOf(element(sample.disc));
		Screen.click(stack, 12, place.y + place.height / 2);
		assertFalse(element(sample.disc).isVisible());
		assertColour(SampleJob.MAT_COLOUR, seenAt(120, 40));
		Screen.click(stack, 36, place.y + place.height / 2);
		assertTrue(element(sample.disc).isLocked());
		Screen.click(stack, 12, place.y + place.height / 2);
		Screen.click(stack, 36, place.y + place.height / 2);
		assertUndoneIn(4);
	}

	@Test
	void keysHideAndPinAnElement() throws IOException {
		click(element(sample.disc));
		Screen.key("ctrl+h");
		assertFalse(element(sample.disc).isVisible());
		Screen.key("ctrl+l");
		assertTrue(element(sample.disc).isLocked());
		assertTrue(layer("Disc").isVisible());
		assertUndoneIn(2);
	}

	@Test
	void deleteKeyDeletesElementsAndLayers() throws IOException {
		click(element(sample.disc));
		Screen.key("Delete");
		assertFalse(Jobs.element(bench.document().job(), sample.disc.getId()).isPresent());
		clickLayer("Plate");
		Screen.key("Delete");
		assertEquals(List.of("Mat", "Disc"), bench.document().job().getLayers().stream().map(Layer::getName).toList());
		assertTrue(layer("Mat").getElements().isEmpty());
		assertUndoneIn(2);
	}

	@Test
	void layersAreAddedAndDuplicatedByKeys() throws IOException {
		clickLayer("Plate");
		Screen.key("ctrl+b");
		Screen.key("a");
		Screen.type("Film");
		Screen.key("Return");
		assertEquals(List.of("Mat", "Plate", "Film", "Disc"),
				bench.document().job().getLayers().stream().map(Layer::getName).toList());
		clickLayer("Plate");
		Screen.key("ctrl+b");
		Screen.key("d");
		assertEquals(List.of("Mat", "Plate", "Plate copy", "Film", "Disc"),
				bench.document().job().getLayers().stream().map(Layer::getName).toList());
		assertUndoneIn(3);
	}

	@Test
	void stockIsNamedByKey() throws IOException {
		clickLayer("Plate");
		Screen.key("ctrl+b");
		Screen.key("s");
		Screen.type("card-270");
		Screen.key("Return");
		assertEquals("card-270", layer("Plate").getStock());
		assertUndoneIn(1);
	}

	@Test
	void colourIsChosenFromThoseInUse() throws IOException {
		clickLayer("Plate");
		Menu menu = stack.getMenu();
		menu.notifyListeners(SWT.Show, new Event());
		Menu colours = find(menu, "Stock Colour").getMenu();
		assertTrue(find(colours, SampleJob.PLATE_COLOUR).getSelection());
		MenuItem item = find(colours, SampleJob.DISC_COLOUR);
		item.setSelection(true);
		item.notifyListeners(SWT.Selection, new Event());
		assertEquals(SampleJob.DISC_COLOUR, layer("Plate").getColour());
		Screen.settle();
		assertColour(SampleJob.DISC_COLOUR, seenAt(30, 30));
		assertUndoneIn(1);
	}

	@Test
	void colourMenuOpensByKeyAndTakesAChoice() throws IOException {
		clickLayer("Mat");
		Screen.key("ctrl+b");
		Screen.key("c");
		Screen.key("Down");
		Screen.key("Down");
		Screen.key("Return");
		Screen.waitUntil("a colour is taken", () -> bench.commandStack().canUndo());
		assertEquals(SampleJob.PLATE_COLOUR, layer("Mat").getColour());
		assertUndoneIn(1);
	}

	private static MenuItem find(Menu menu, String text) {
		return Stream.of(menu.getItems()).filter(item -> item.getText().startsWith(text)).findFirst().orElseThrow(
				() -> new AssertionError("no " + text + " in " + Stream.of(menu.getItems()).map(MenuItem::getText).toList()));
	}

	@Test
	void menuIsMadeForTheRowItIsAskedOf() {
		click(element(sample.disc));
		Menu menu = stack.getMenu();
		menu.notifyListeners(SWT.Show, new Event());
		assertTrue(find(menu, "Rename").getText().endsWith("F2"));
		assertFalse(find(menu, "Group").isEnabled());
		find(menu, "Hide").notifyListeners(SWT.Selection, new Event());
		assertFalse(element(sample.disc).isVisible());
		menu.notifyListeners(SWT.Show, new Event());
		find(menu, "Show");
	}

	@Test
	void bracketOfAGroupSelectsItWhole() throws IOException {
		edits().execute(new GroupElements(List.of(element(sample.plate), element(sample.disc))));
		bench.viewer().deselectAll();
		ImageData picture = Screen.picture(stack);
		Rectangle plate = stack.boundsOf(element(sample.plate));
		Rectangle disc = stack.boundsOf(element(sample.disc));
		int between = (plate.y + disc.y + disc.height) / 2;
		assertEquals(stack.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND).getRGB(),
				Screen.pixel(picture, 51, between));
		Screen.keep(picture, "stack-group");
		Screen.click(stack, 58, plate.y + plate.height / 2);
		assertEquals(Set.of(sample.plate.getId(), sample.disc.getId()), Set.copyOf(selectedIds()));
		click(element(sample.plate));
		assertEquals(List.of(sample.plate.getId()), selectedIds());
	}

	@Test
	void keysGroupWhatIsSelectedInTheStack() throws IOException {
		click(element(sample.disc));
		Screen.holding("ctrl", () -> click(element(sample.plate)));
		Screen.key("ctrl+b");
		Screen.key("g");
		assertEquals(1, bench.document().job().getGroups().size());
		Screen.key("ctrl+b");
		Screen.key("u");
		assertUndoneIn(2);
	}

	@Test
	void severalSelectedAreDraggedTogether() throws IOException {
		click(element(sample.disc));
		Screen.holding("ctrl", () -> click(element(sample.plate)));
		Rectangle from = stack.boundsOf(element(sample.disc));
		Rectangle to = stack.boundsOf(layer("Mat"));
		Screen.drag(stack, 100, from.y + from.height / 2, 100, to.y + 10);
		assertEquals(List.of(sample.mat.getId(), sample.plate.getId(), sample.disc.getId()),
				layer("Mat").getElements().stream().map(Element::getId).toList());
		assertUndoneIn(1);
	}
}
