package org.frisket.ui.orders.internal.book;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.frisket.orders.desk.BookColumn;
import org.frisket.orders.desk.BookQuery;

/** What the order book can be sorted by, to be chosen with keys: the same once more turns the order round. */
final class SortMenu {

	private final Menu menu;

	/** @param sorted told of the column that was chosen */
	SortMenu(Control table, BookQuery now, Consumer<BookColumn> sorted) {
		menu = new Menu(table);
		for (GridColumn column : GridColumn.values()) {
			column.sorts().ifPresent(by -> {
				MenuItem item = new MenuItem(menu, SWT.RADIO);
				item.setText(column.title());
				item.setSelection(by == now.column());
				item.addListener(SWT.Selection, event -> {
					// the one that was chosen before is told too
					if (item.getSelection()) {
						sorted.accept(by);
					}
				});
			});
		}
		menu.addListener(SWT.Hide, event -> table.getDisplay().asyncExec(menu::dispose));
	}

	/** Below the titles. @param place in pixels of the screen */
	void open(Point place) {
		menu.setLocation(place);
		menu.setVisible(true);
	}
}
