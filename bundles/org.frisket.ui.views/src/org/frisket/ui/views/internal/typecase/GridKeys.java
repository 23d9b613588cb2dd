package org.frisket.ui.views.internal.typecase;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** The keys that go from glyph to glyph; those with modifiers are left to the commands, letters go to the search. */
final class GridKeys {

	private final GlyphGrid grid;

	GridKeys(GlyphGrid grid) {
		this.grid = grid;
		grid.addListener(SWT.KeyDown, this::pressed);
		grid.addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT
				&& event.detail != SWT.TRAVERSE_ARROW_PREVIOUS && event.detail != SWT.TRAVERSE_RETURN
				&& event.detail != SWT.TRAVERSE_PAGE_NEXT && event.detail != SWT.TRAVERSE_PAGE_PREVIOUS);
	}

	private void pressed(Event event) {
		boolean bare = (event.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) == 0;
		if (bare && !act(event.keyCode) && event.character > ' ' && event.character != SWT.DEL) {
			grid.client().typed(event.character);
		}
	}

	/** Whether the key means something here. */
	private boolean act(int key) {
		GridGeometry geometry = grid.geometry();
		int at = grid.selectedIndex();
		int page = geometry.rowsOnPage() * geometry.columns();
		switch (key) {
		case SWT.ARROW_LEFT -> grid.go(at - 1);
		case SWT.ARROW_RIGHT -> grid.go(at + 1);
		case SWT.ARROW_UP -> step(at, -geometry.columns());
		case SWT.ARROW_DOWN -> step(at, geometry.columns());
		case SWT.PAGE_UP -> step(at, -page);
		case SWT.PAGE_DOWN -> step(at, page);
		case SWT.HOME -> grid.go(0);
		case SWT.END -> grid.go(grid.entries().size() - 1);
		case SWT.CR, SWT.KEYPAD_CR -> grid.choose();
		default -> {
			return false;
		}
		}
		return true;
	}

	/** By whole rows within the column, as far as there are any. */
	private void step(int at, int cells) {
		int columns = grid.geometry().columns();
		int last = grid.entries().size() - 1;
		if (at < 0) {
			grid.go(0);
		} else if (at + cells < 0) {
			grid.go(at % columns);
		} else if (at + cells > last) {
			// the last row may be short
			int row = last / columns * columns;
			grid.go(at >= row ? at : Math.min(last, row + at % columns));
		} else {
			grid.go(at + cells);
		}
	}
}
