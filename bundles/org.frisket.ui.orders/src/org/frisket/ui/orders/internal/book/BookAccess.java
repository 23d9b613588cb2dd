package org.frisket.ui.orders.internal.book;

import java.util.Optional;

import org.eclipse.swt.graphics.Rectangle;
import org.frisket.ui.orders.internal.ListAccess;

/** What assistive technology is told of the rows of the order book. */
record BookAccess(BookGrid grid) implements ListAccess.Entries {

	@Override
	public int size() {
		return grid.lines().size();
	}

	@Override
	public int cursor() {
		return grid.cursorRow();
	}

	@Override
	public boolean isSelected(int row) {
		return grid.isSelected(row);
	}

	@Override
	public String name(int row) {
		if (row < 0) {
			return Messages.BookAccess_name;
		}
		return grid.lines().job(row).map(job -> grid.text().spoken(job, grid.today()))
				.orElseGet(() -> grid.text().heading(grid.lines().group(row).orElseThrow()));
	}

	@Override
	public Optional<Rectangle> boundsOf(int row) {
		return grid.boundsOf(row);
	}
}
