package org.frisket.ui.material.internal.shelf;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** The keys that go from stock to stock and act on it; those with modifiers are left to the commands. */
final class ShelfKeys {

	private final ShelfCanvas canvas;

	ShelfKeys(ShelfCanvas canvas) {
		this.canvas = canvas;
		canvas.addListener(SWT.KeyDown, this::pressed);
	}

	private void pressed(Event event) {
		boolean plain = (event.stateMask & (SWT.MOD1 | SWT.MOD3 | SWT.MOD4)) == 0;
		if (event.keyCode == SWT.TAB && plain) {
			canvas.traverse((event.stateMask & SWT.SHIFT) == 0 ? SWT.TRAVERSE_TAB_NEXT : SWT.TRAVERSE_TAB_PREVIOUS);
		} else if (plain && !went(canvas, event.keyCode)) {
			act(event);
		}
	}

	/** Goes where a key leads to; answers false if it leads nowhere. For fields as well whose list this is. */
	static boolean went(ShelfCanvas canvas, int key) {
		int page = canvas.rowsOnPage();
		switch (key) {
		case SWT.ARROW_UP -> canvas.go(canvas.selectedIndex() - 1);
		case SWT.ARROW_DOWN -> canvas.go(canvas.selectedIndex() + 1);
		case SWT.PAGE_UP -> canvas.go(canvas.selectedIndex() - page);
		case SWT.PAGE_DOWN -> canvas.go(canvas.selectedIndex() + page);
		case SWT.HOME -> canvas.go(0);
		case SWT.END -> canvas.go(Integer.MAX_VALUE);
		default -> {
			return false;
		}
		}
		return true;
	}

	private void act(Event event) {
		ShelfCanvas.Client client = canvas.client();
		switch (event.keyCode) {
		case SWT.CR, SWT.KEYPAD_CR -> canvas.selection().ifPresent(client::chosen);
		case SWT.DEL -> canvas.selection().ifPresent(client::removed);
		case SWT.ESC -> client.typed((char) 0);
		default -> typed(event.character, client);
		}
	}

	private void typed(char character, ShelfCanvas.Client client) {
		if (character == '+') {
			canvas.selection().ifPresent(stock -> client.counted(stock, 1));
		} else if (character == '-') {
			canvas.selection().ifPresent(stock -> client.counted(stock, -1));
		} else if (!Character.isISOControl(character)) {
			client.typed(character);
		}
	}
}
