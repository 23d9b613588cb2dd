package org.frisket.ui.orders.internal.book;

import org.eclipse.nebula.widgets.nattable.data.IRowDataProvider;
import org.frisket.orders.desk.BookLine;

/** The lines of the order book as the table asks for them. */
final class BookRows implements IRowDataProvider<BookLine> {

	private final BookGrid grid;

	BookRows(BookGrid grid) {
		this.grid = grid;
	}

	@Override
	public Object getDataValue(int column, int row) {
		return row >= getRowCount() ? "" : grid.lines().job(row) //$NON-NLS-1$
				.map(job -> grid.text().of(job, GridColumn.values()[column], grid.today()))
				.orElseGet(() -> column > 0 ? "" : grid.text().heading(grid.lines().group(row).orElseThrow())); //$NON-NLS-1$
	}

	@Override
	public void setDataValue(int column, int row, Object value) {
		throw new UnsupportedOperationException("the order book is not changed in its table"); //$NON-NLS-1$
	}

	@Override
	public int getColumnCount() {
		return GridColumn.values().length;
	}

	@Override
	public int getRowCount() {
		return grid.lines().size();
	}

	@Override
	public BookLine getRowObject(int row) {
		return row < 0 || row >= getRowCount() ? null : grid.lines().line(row);
	}

	@Override
	public int indexOfRowObject(BookLine line) {
		return grid.lines().indexOf(line);
	}
}
