package org.frisket.ui.orders.internal.book;

import java.util.Optional;

import org.frisket.orders.desk.BookColumn;

/** The columns of the order book as they stand beside each other. Widths are in pixels at 100 %. */
enum GridColumn {
	NUMBER(BookColumn.NUMBER, 64, true), PICTURE(null, 68, false), TITLE(BookColumn.TITLE, 186, false),
	CUSTOMER(BookColumn.CUSTOMER, 150, false), STAGE(BookColumn.STAGE, 108, false), DUE(BookColumn.DUE, 240, false),
	STOCK(BookColumn.STOCK, 112, false), QUANTITY(BookColumn.QUANTITY, 76, true);

	private final BookColumn sorts;
	private final int width;
	private final boolean figures;

	GridColumn(BookColumn sorts, int width, boolean figures) {
		this.sorts = sorts;
		this.width = width;
		this.figures = figures;
	}

	/** What the book is sorted by when it is asked for. */
	Optional<BookColumn> sorts() {
		return Optional.ofNullable(sorts);
	}

	int width() {
		return width;
	}

	/** Whether what is in it stands at the right. */
	boolean isFigures() {
		return figures;
	}

	String title() {
		return switch (this) {
		case NUMBER -> Messages.GridColumn_number;
		case PICTURE -> Messages.GridColumn_picture;
		case TITLE -> Messages.GridColumn_title;
		case CUSTOMER -> Messages.GridColumn_customer;
		case STAGE -> Messages.GridColumn_stage;
		case DUE -> Messages.GridColumn_due;
		case STOCK -> Messages.GridColumn_stock;
		case QUANTITY -> Messages.GridColumn_quantity;
		};
	}
}
