package org.frisket.ui.orders.internal.book;

import org.eclipse.ui.IMemento;
import org.frisket.orders.desk.BookChoice;
import org.frisket.orders.desk.BookColumn;
import org.frisket.orders.desk.BookGrouping;
import org.frisket.orders.desk.BookQuery;

/** How the order book was looked at when it was closed last: order, filter, groups, widths. Words are not kept. */
final class BookMemory {

	private static final String CHOICE = "choice"; //$NON-NLS-1$
	private static final String COLUMN = "column"; //$NON-NLS-1$
	private static final String DESCENDING = "descending"; //$NON-NLS-1$
	private static final String GROUPING = "grouping"; //$NON-NLS-1$
	private static final String WIDTH = "width."; //$NON-NLS-1$
	private static final int LEAST_PX = 16;

	private BookMemory() {
	}

	/** @param kept null if nothing was */
	static BookQuery query(IMemento kept) {
		if (kept == null) {
			return BookQuery.ALL;
		}
		Boolean descending = kept.getBoolean(DESCENDING);
		return new BookQuery("", constant(BookChoice.ALL, kept.getString(CHOICE)), //$NON-NLS-1$
				constant(BookColumn.NUMBER, kept.getString(COLUMN)), descending == null || descending,
				constant(BookGrouping.NONE, kept.getString(GROUPING)));
	}

	private static <E extends Enum<E>> E constant(E usual, String name) {
		for (E each : usual.getDeclaringClass().getEnumConstants()) {
			if (each.name().equals(name)) {
				return each;
			}
		}
		return usual;
	}

	/** @param kept null if nothing was */
	static void recall(IMemento kept, BookGrid grid) {
		for (GridColumn column : GridColumn.values()) {
			Integer width = kept == null ? null : kept.getInteger(WIDTH + column.name());
			if (width != null && width >= LEAST_PX) {
				grid.setWidth(column, width);
			}
		}
	}

	static void keep(IMemento kept, BookQuery query, BookGrid grid) {
		kept.putString(CHOICE, query.choice().name());
		kept.putString(COLUMN, query.column().name());
		kept.putBoolean(DESCENDING, query.descending());
		kept.putString(GROUPING, query.grouping().name());
		for (GridColumn column : GridColumn.values()) {
			kept.putInteger(WIDTH + column.name(), grid.widthOf(column));
		}
	}
}
