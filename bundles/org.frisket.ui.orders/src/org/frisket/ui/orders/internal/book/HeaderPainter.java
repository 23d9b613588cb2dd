package org.frisket.ui.orders.internal.book;

import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.AbstractCellPainter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.frisket.orders.desk.BookColumn;
import org.frisket.orders.desk.BookQuery;

/** Paints the titles of the columns; that by which the book is sorted points up or down. */
final class HeaderPainter extends AbstractCellPainter {

	private static final int ARM_PX = 4;

	private final BookGrid grid;

	HeaderPainter(BookGrid grid) {
		this.grid = grid;
	}

	@Override
	public int getPreferredWidth(ILayerCell cell, GC gc, IConfigRegistry registry) {
		return gc.textExtent(GridColumn.values()[cell.getColumnIndex()].title()).x + 8 * BookPainter.SPACE_PX;
	}

	@Override
	public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry registry) {
		return gc.getFontMetrics().getHeight() + 2 * BookPainter.SPACE_PX;
	}

	@Override
	public void paintCell(ILayerCell cell, GC gc, Rectangle bounds, IConfigRegistry registry) {
		Rectangle clip = gc.getClipping();
		gc.setClipping(bounds.intersection(clip));
		Display display = Display.getCurrent();
		Color ink = display.getSystemColor(SWT.COLOR_WIDGET_FOREGROUND);
		gc.setFont(grid.table().getFont());
		gc.setBackground(display.getSystemColor(SWT.COLOR_WIDGET_BACKGROUND));
		gc.fillRectangle(bounds);
		GridColumn column = GridColumn.values()[cell.getColumnIndex()];
		BookQuery query = grid.lines().sight().query();
		BookColumn sorted = query.column();
		boolean here = column.sorts().isPresent() && column.sorts().get() == sorted;
		int mark = here ? 4 * ARM_PX : 0;
		int room = bounds.width - 4 * BookPainter.SPACE_PX - mark;
		gc.setForeground(ink);
		String title = BookPainter.shortened(gc, column.title(), room);
		Point size = gc.textExtent(title);
		int left = column.isFigures() ? bounds.x + bounds.width - 2 * BookPainter.SPACE_PX - size.x
				: bounds.x + 2 * BookPainter.SPACE_PX;
		gc.drawText(title, left, bounds.y + (bounds.height - size.y) / 2, true);
		if (here) {
			int x = column.isFigures() ? left - 3 * ARM_PX : left + size.x + ARM_PX;
			int middle = bounds.y + bounds.height / 2;
			gc.setBackground(ink);
			gc.fillPolygon(query.descending()
					? new int[] { x, middle - 2, x + 2 * ARM_PX, middle - 2, x + ARM_PX, middle + 2 }
					: new int[] { x - 1, middle + 2, x + 2 * ARM_PX + 1, middle + 2, x + ARM_PX, middle - 3 });
		}
		gc.setForeground(display.getSystemColor(SWT.COLOR_WIDGET_NORMAL_SHADOW));
		gc.drawLine(bounds.x, bounds.y + bounds.height - 1, bounds.x + bounds.width, bounds.y + bounds.height - 1);
		gc.setClipping(clip);
	}
}
