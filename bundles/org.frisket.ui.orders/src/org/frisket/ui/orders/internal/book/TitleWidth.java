package org.frisket.ui.orders.internal.book;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.resize.event.ColumnResizeEvent;
import org.eclipse.swt.SWT;

/** Has the column of the titles take what the others leave of the table, but never less than it was given. */
final class TitleWidth {

	private static final int TITLE = GridColumn.TITLE.ordinal();

	private final NatTable table;
	private final DataLayer data;
	private int least = GridColumn.TITLE.width();
	private boolean fitting;

	TitleWidth(NatTable table, DataLayer data) {
		this.table = table;
		this.data = data;
	}

	void install() {
		table.addListener(SWT.Resize, event -> fit());
		data.addLayerListener(event -> {
			if (event instanceof ColumnResizeEvent resized && !fitting) {
				if (resized.getColumnPositionRanges().stream().anyMatch(range -> range.contains(TITLE))) {
					least = data.getColumnWidthByPosition(TITLE);
				}
				// later, for others are still being told of this width
				table.getDisplay().asyncExec(this::fit);
			}
		});
	}

	/** What the column was given, however wide it is now; in pixels. */
	int least() {
		return least;
	}

	private void fit() {
		if (table.isDisposed() || table.getClientArea().width == 0) {
			return;
		}
		int others = data.getWidth() - data.getColumnWidthByPosition(TITLE);
		int width = Math.max(least, table.getClientArea().width - others);
		if (width != data.getColumnWidthByPosition(TITLE)) {
			fitting = true;
			data.setColumnWidthByPosition(TITLE, width);
			fitting = false;
		}
	}
}
