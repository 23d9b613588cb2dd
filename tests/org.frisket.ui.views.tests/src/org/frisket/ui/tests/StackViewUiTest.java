package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.layers.SetLayerColour;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.stack.StackCanvas;
import org.frisket.ui.views.internal.stack.StackView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The layers drawn edge-on, met by pointer and keys. */
class StackViewUiTest extends OpenBench {

	private StackView view;
	private StackCanvas stack;

	@BeforeEach
	void openStack() throws Exception {
		view = (StackView) page().showView(Views.STACK_ID);
		stack = view.canvas();
		Screen.settle();
	}

	private Layer layer(String name) {
		return bench.document().job().getLayers().stream().filter(layer -> name.equals(layer.getName())).findFirst()
				.orElseThrow();
	}

	private List<String> names() {
		return bench.document().job().getLayers().stream().map(Layer::getName).toList();
	}

	private void clickLayer(String name) {
		Rectangle place = stack.boundsOf(layer(name));
		Screen.click(stack, place.x + place.width / 2, place.y + place.height / 2);
	}

	@Test
	void sheetsLieInTheirColoursTheTopmostAtTheTop() throws IOException {
		ImageData picture = Screen.picture(stack);
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "stack");
		assertTrue(stack.boundsOf(layer("Disc")).y < stack.boundsOf(layer("Plate")).y);
		assertTrue(stack.boundsOf(layer("Plate")).y < stack.boundsOf(layer("Mat")).y);
		assertShown(picture, "Disc", SampleJob.DISC_COLOUR);
		assertShown(picture, "Plate", SampleJob.PLATE_COLOUR);
		assertShown(picture, "Mat", SampleJob.MAT_COLOUR);
	}

	/** Somewhere down the middle of the layer's row lies its sheet. */
	private void assertShown(ImageData picture, String name, String colour) {
		Rectangle place = stack.boundsOf(layer(name));
		int rgb = Integer.parseInt(colour.substring(1), 16);
		RGB expected = new RGB(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff);
		boolean found = false;
		for (int y = place.y; y < place.y + place.height && y < picture.height; y++) {
			found |= Screen.pixel(picture, place.x + place.width - 30, y).equals(expected);
		}
		assertTrue(found, name);
	}

	@Test
	void eyeHidesALayerAndUndoShowsIt() {
		Rectangle place = stack.boundsOf(layer("Disc"));
		Screen.click(stack, place.x + 12, place.y + 12);
		assertFalse(layer("Disc").isVisible());
		assertColour(SampleJob.MAT_COLOUR, seenAt(120, 40));
		bench.commandStack().undo();
		assertTrue(layer("Disc").isVisible());
		Screen.settle();
		assertColour(SampleJob.DISC_COLOUR, seenAt(120, 40));
	}

	@Test
	void pinLocksALayer() {
		Rectangle place = stack.boundsOf(layer("Plate"));
		Screen.click(stack, place.x + 36, place.y + 12);
		assertTrue(layer("Plate").isLocked());
		Screen.click(stack, place.x + 36, place.y + 12);
		assertFalse(layer("Plate").isLocked());
	}

	@Test
	void keysHidePinAndRestack() {
		clickLayer("Plate");
		Screen.key("ctrl+h");
		assertFalse(layer("Plate").isVisible());
		Screen.key("ctrl+l");
		assertTrue(layer("Plate").isLocked());
		Screen.key("alt+Up");
		assertEquals(List.of("Mat", "Disc", "Plate"), names());
		Screen.key("alt+Down");
		Screen.key("alt+Down");
		assertEquals(List.of("Plate", "Mat", "Disc"), names());
		Screen.key("alt+Down");
		assertEquals(List.of("Plate", "Mat", "Disc"), names());
	}

	@Test
	void dragRestacksInOneStep() {
		Rectangle from = stack.boundsOf(layer("Mat"));
		Rectangle to = stack.boundsOf(layer("Disc"));
		Screen.drag(stack, from.x + from.width / 2, from.y + from.height / 2, from.x + from.width / 2, to.y + 2);
		assertEquals(List.of("Plate", "Disc", "Mat"), names());
		bench.commandStack().undo();
		assertEquals(List.of("Mat", "Plate", "Disc"), names());
		assertFalse(bench.isDirty());
	}

	@Test
	void escapeLeavesADraggedLayerWhereItWas() {
		Rectangle from = stack.boundsOf(layer("Mat"));
		Screen.moveTo(stack, from.x + from.width / 2, from.y + from.height / 2);
		Screen.pressButton();
		Screen.moveTo(stack, from.x + from.width / 2, from.y - 20);
		Screen.moveTo(stack, from.x + from.width / 2, 4);
		Screen.key("Escape");
		Screen.releaseButton();
		assertEquals(List.of("Mat", "Plate", "Disc"), names());
	}

	@Test
	void layerIsRenamedInItsPlace() {
		clickLayer("Plate");
		Screen.key("F2");
		Screen.type("Ferry");
		Screen.key("Return");
		assertEquals(List.of("Mat", "Ferry", "Disc"), names());
		Screen.waitUntil("the stack has the focus", stack::isFocusControl);
		bench.commandStack().undo();
		assertEquals(List.of("Mat", "Plate", "Disc"), names());
	}

	@Test
	void escapeLeavesTheOldName() {
		clickLayer("Plate");
		Screen.key("F2");
		Screen.type("Ferry");
		Screen.key("Escape");
		assertEquals(List.of("Mat", "Plate", "Disc"), names());
	}

	@Test
	void keysOfTheTextMeanTheTextWhileANameIsTyped() {
		bench.viewer().deselectAll();
		clickLayer("Plate");
		Screen.key("F2");
		Screen.type("Quay");
		Screen.key("ctrl+a");
		assertEquals(List.of(), selectedIds());
		Screen.type("Pier");
		Screen.key("Return");
		assertEquals(List.of("Mat", "Pier", "Disc"), names());
	}

	@Test
	void selectionIsTheSameInBoth() {
		Rectangle row = stack.boundsOf(element(sample.disc));
		Screen.click(stack, row.x + row.width / 2, row.y + row.height / 2);
		assertEquals(List.of(sample.disc.getId()), selectedIds());
		Screen.key("Down");
		Screen.key("Down");
		assertEquals(List.of(sample.plate.getId()), selectedIds());
		bench.viewer().deselectAll();
		page().activate(bench);
		org.eclipse.draw2d.geometry.Point disc = pixelOf(120, 40);
		Screen.click(canvas(), disc.x, disc.y);
		ImageData picture = Screen.picture(stack);
		Rectangle selected = stack.boundsOf(element(sample.disc));
		RGB ground = Screen.pixel(picture, 4, selected.y + selected.height / 2);
		assertFalse(ground.equals(Screen.pixel(picture, 4, stack.boundsOf(element(sample.plate)).y + 4)));
	}

	@Test
	void stackFollowsTheJob() {
		edits().execute(new DeleteElements(List.of(element(sample.disc))));
		Screen.settle();
		assertEquals(0, stack.boundsOf(sample.disc).height);
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		assertEquals(3, Jobs.jobOf(layer("Mat")).getLayers().size());
	}

	@Test
	void stackSaysWhatItIsForWhenNothingIsOpen() {
		page().closeAllEditors(false);
		Screen.waitUntil("the view is empty", () -> view.note().startsWith("Open a job"));
	}

	@Test
	void sheetWithoutOwnColourIsShownInThatOfTheBench() {
		Layer blank = layer("Disc");
		edits().execute(new SetLayerColour(blank, null));
		ImageData picture = Screen.picture(stack);
		Rectangle place = stack.boundsOf(blank);
		RGB expected = ThemeColour.BENCH_STOCK.colour().getRGB();
		boolean found = false;
		for (int y = place.y; y < place.y + place.height; y++) {
			found |= Screen.pixel(picture, place.x + place.width - 30, y).equals(expected);
		}
		assertTrue(found);
	}
}
