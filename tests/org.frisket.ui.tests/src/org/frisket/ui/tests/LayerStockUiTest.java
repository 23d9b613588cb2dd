package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.frisket.model.Layer;
import org.frisket.ui.material.internal.shelf.StockPopup;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.stack.StackCanvas;
import org.frisket.ui.views.internal.stack.StackView;
import org.junit.jupiter.api.Test;

/** A stock of the shelf becomes that of a layer. */
class LayerStockUiTest extends OpenShelf {

	private StackCanvas stack() throws Exception {
		StackView view = (StackView) page().showView(Views.STACK_ID);
		page().activate(view);
		Screen.waitUntil("the stack shows the job", () -> view.note().isEmpty());
		Screen.waitUntil("the stack listens", () -> view.canvas().isFocusControl() || view.canvas().setFocus());
		Screen.settle();
		return view.canvas();
	}

	private static StockPopup popup() {
		Screen.waitUntil("the shelf is offered", () -> Arrays.stream(Display.getCurrent().getShells())
				.anyMatch(each -> each.getData() instanceof StockPopup));
		StockPopup popup = (StockPopup) Arrays.stream(Display.getCurrent().getShells()).map(Shell::getData)
				.filter(StockPopup.class::isInstance).findFirst().orElseThrow();
		Screen.waitUntil("it listens", () -> popup.filter().isFocusControl() || popup.filter().setFocus());
		Screen.settle();
		return popup;
	}

	private static void await(Layer layer, String stock) {
		Screen.waitUntil("the layer has its stock", () -> stock.equals(layer.getStock()));
	}

	/** How many pixels of a layer's sheet have its colour, from edge to edge. */
	private static long thickness(StackCanvas stack, Layer layer, RGB colour) {
		Rectangle place = stack.boundsOf(layer);
		ImageData picture = Screen.picture(stack);
		return IntStream.range(place.y, place.y + place.height)
				.filter(y -> Screen.pixel(picture, place.x + place.width / 2, y).equals(colour)).count();
	}

	@Test
	void stockIsChosenByTypingAndBringsItsColour() throws Exception {
		StackCanvas stack = stack();
		Layer layer = stack.currentLayer();
		String stockBefore = layer.getStock();
		String colourBefore = layer.getColour();
		Screen.events("key", "ctrl+b", "s");
		StockPopup popup = popup();
		assertEquals(3, popup.canvas().stocks().size());
		Screen.keepScreen("stock-of-a-layer");
		Screen.type("red");
		Screen.waitUntil("only the red one is left", () -> popup.canvas().stocks().size() == 1);
		Screen.key("Return");
		await(layer, "harbour-card-red-c02020");
		assertEquals("#c02020", layer.getColour());
		String name = "Harbour card, red #c02020";
		Screen.waitUntil("the name of the stock stands in the stack", () -> stack.title(layer).endsWith(name));
		Screen.waitUntil("the card is drawn thin", () -> thickness(stack, layer, new RGB(0xc0, 0x20, 0x20)) == 1);
		Screen.keepScreen("stock-in-the-stack");
		bench.commandStack().undo();
		assertEquals(stockBefore, layer.getStock());
		assertEquals(colourBefore, layer.getColour(), "one step of undo");
	}

	@Test
	void whatIsOnNoShelfIsTypedAndEscapeLeavesAllAsItIs() throws Exception {
		StackCanvas stack = stack();
		Layer layer = stack.currentLayer();
		Screen.events("key", "ctrl+b", "s");
		popup();
		Screen.type("velvet");
		Screen.key("Escape");
		assertFalse(bench.commandStack().canUndo());
		stack();
		Screen.events("key", "ctrl+b", "s");
		popup();
		Screen.type("velvet");
		Screen.key("Return");
		await(layer, "velvet");
		bench.commandStack().undo();
	}

	@Test
	void stockIsDraggedOntoALayer() throws Exception {
		StackCanvas stack = stack();
		// the topmost is seen however low the view is
		Layer layer = bench.document().job().getLayers().get(bench.document().job().getLayers().size() - 1);
		Rectangle place = stack.boundsOf(layer);
		assertTrue(place.height > 0);
		Rectangle from = shelf.canvas().faceOf(0);
		Screen.moveTo(shelf.canvas(), from.x + 8, from.y + 8);
		Screen.pressButton();
		Screen.moveTo(shelf.canvas(), from.x + 20, from.y + 20);
		Screen.moveTo(shelf.canvas(), from.x + 40, from.y + 24);
		Screen.moveTo(stack, place.x + place.width / 2, place.y + place.height / 2 - 4);
		Screen.moveTo(stack, place.x + place.width / 2, place.y + place.height / 2);
		Screen.rest(200);
		Screen.releaseButton();
		await(layer, "harbour-board");
		assertEquals("#4060a0", layer.getColour());
		Screen.waitUntil("the board is drawn thick", () -> thickness(stack, layer, new RGB(0x40, 0x60, 0xa0)) == 6);
		bench.commandStack().undo();
	}
}
