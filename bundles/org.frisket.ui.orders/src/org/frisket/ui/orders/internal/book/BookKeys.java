package org.frisket.ui.orders.internal.book;

import org.eclipse.nebula.widgets.nattable.config.AbstractUiBindingConfiguration;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.ui.action.IKeyAction;
import org.eclipse.nebula.widgets.nattable.ui.binding.UiBindingRegistry;
import org.eclipse.nebula.widgets.nattable.ui.matcher.IKeyEventMatcher;
import org.eclipse.nebula.widgets.nattable.ui.matcher.KeyEventMatcher;
import org.eclipse.nebula.widgets.nattable.ui.matcher.MouseEventMatcher;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.MouseEvent;
import org.frisket.orders.desk.BookGroup;

/** What keys and the mouse do in the table, beside moving and selecting. */
final class BookKeys extends AbstractUiBindingConfiguration {

	private final BookGrid grid;

	BookKeys(BookGrid grid) {
		this.grid = grid;
	}

	void install() {
		grid.table().addConfiguration(this);
		// the table would take it for its own: nobody could leave by it
		grid.table().addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
	}

	@Override
	public void configureUiBindings(UiBindingRegistry bindings) {
		key(bindings, SWT.NONE, SWT.CR, event -> choose());
		key(bindings, SWT.NONE, SWT.KEYPAD_CR, event -> choose());
		for (int shift : new int[] { SWT.NONE, SWT.SHIFT, SWT.MOD1, SWT.MOD1 | SWT.SHIFT }) {
			boolean extend = (shift & SWT.SHIFT) != 0;
			key(bindings, shift, SWT.HOME, event -> grid.go(0, extend));
			key(bindings, shift, SWT.END, event -> grid.go(grid.lines().size() - 1, extend));
		}
		// else they would begin at the first line of the book, or nowhere
		bindings.registerFirstKeyBinding(this::isFirstMove, (table, event) -> grid.go(grid.top(), false));
		key(bindings, SWT.NONE, SWT.ARROW_LEFT, event -> fold(true));
		key(bindings, SWT.NONE, SWT.ARROW_RIGHT, event -> fold(false));
		key(bindings, SWT.NONE, SWT.ESC, event -> grid.client().typed((char) 0));
		bindings.registerFirstKeyBinding(isTyped(), (table, event) -> type(event));
		bindings.registerFirstDoubleClickBinding(MouseEventMatcher.bodyLeftClick(SWT.NONE),
				(table, event) -> chooseAt(event));
		bindings.registerFirstSingleClickBinding(MouseEventMatcher.columnHeaderLeftClick(SWT.NONE),
				(table, event) -> sort(event));
		// what is clicked with the other button is meant by the menu
		bindings.registerFirstMouseDownBinding(MouseEventMatcher.bodyRightClick(SWT.NONE),
				(table, event) -> mean(event));
		bindings.registerFirstMouseDownBinding(
				new MouseEventMatcher(SWT.NONE, GridRegion.BODY, MouseEventMatcher.RIGHT_BUTTON),
				(table, event) -> mean(event));
	}

	private interface Key {
		void pressed(KeyEvent event);
	}

	private void key(UiBindingRegistry bindings, int state, int key, Key action) {
		IKeyAction run = (table, event) -> action.pressed(event);
		bindings.registerFirstKeyBinding(new KeyEventMatcher(state, key), run);
	}

	/** Whether keys begin to go through the lines, and nothing is selected from where they could. */
	private boolean isFirstMove(KeyEvent event) {
		return !grid.hasSelection() && (event.stateMask & SWT.MODIFIER_MASK) == 0
				&& (event.keyCode == SWT.ARROW_DOWN || event.keyCode == SWT.ARROW_UP || event.keyCode == SWT.PAGE_DOWN
						|| event.keyCode == SWT.PAGE_UP);
	}

	private static IKeyEventMatcher isTyped() {
		return event -> (event.stateMask & SWT.MODIFIER_MASK & ~SWT.SHIFT) == 0 && event.character > ' '
				&& event.character != SWT.DEL;
	}

	private void type(KeyEvent event) {
		grid.client().typed(event.character);
	}

	private void choose() {
		int row = grid.cursorRow();
		if (row >= 0) {
			chooseRow(row);
		}
	}

	private void chooseAt(MouseEvent event) {
		int row = grid.rowAt(event.y);
		if (row >= 0) {
			chooseRow(row);
		}
	}

	private void chooseRow(int row) {
		grid.lines().job(row).ifPresentOrElse(grid.client()::chosen, () -> {
			BookGroup group = grid.lines().group(row).orElseThrow();
			grid.client().folded(group, !grid.lines().isFolded(group));
		});
	}

	private void fold(boolean fold) {
		int row = grid.cursorRow();
		if (row >= 0) {
			grid.lines().group(row).ifPresent(group -> grid.client().folded(group, fold));
		}
	}

	private void sort(MouseEvent event) {
		int position = grid.table().getColumnPositionByX(event.x);
		if (position >= 0) {
			GridColumn column = GridColumn.values()[grid.table().getColumnIndexByPosition(position)];
			column.sorts().ifPresent(grid.client()::sorted);
		}
	}

	private void mean(MouseEvent event) {
		int row = grid.rowAt(event.y);
		if (row >= 0 && !grid.isSelected(row)) {
			grid.go(row, false);
		}
		grid.table().setFocus();
	}
}
