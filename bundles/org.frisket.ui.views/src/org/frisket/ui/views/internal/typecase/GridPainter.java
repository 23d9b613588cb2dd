package org.frisket.ui.views.internal.typecase;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.frisket.typography.chart.GlyphEntry;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.views.internal.Shortened;

/** Paints the cells of a grid that are seen. */
final class GridPainter {

	/** From this width of a cell on, what the glyph is called stands below its picture. */
	private static final int LABELLED_FROM = 60;
	private static final int MARGIN_PX = 12;
	private static final int LINE_ALPHA = 50;
	private static final int LABEL_ALPHA = 190;
	private static final int OPAQUE = 255;

	private final GlyphGrid grid;
	private final GlyphPictures pictures;
	private final int lineHeight;
	private int painted;

	GridPainter(GlyphGrid grid, GlyphPictures pictures) {
		this.grid = grid;
		this.pictures = pictures;
		GC gc = new GC(grid);
		lineHeight = gc.getFontMetrics().getHeight();
		gc.dispose();
	}

	int labelHeight(int cell) {
		return cell < LABELLED_FROM ? 0 : lineHeight;
	}

	int painted() {
		return painted;
	}

	void paint(GC gc) {
		gc.setBackground(system(SWT.COLOR_LIST_BACKGROUND));
		gc.fillRectangle(grid.getClientArea());
		pictures.begin();
		painted = 0;
		if (grid.entries().isEmpty()) {
			paintNote(gc);
			return;
		}
		GridGeometry geometry = grid.geometry();
		for (int i = geometry.firstSeen(grid.scrolled()); i < geometry.afterSeen(grid.scrolled()); i++) {
			paint(gc, grid.entries().get(i), geometry.bounds(i, grid.scrolled()), i == grid.selectedIndex());
		}
	}

	private void paint(GC gc, GlyphEntry entry, Rectangle cell, boolean selected) {
		Color ink = system(selected ? SWT.COLOR_LIST_SELECTION_TEXT : SWT.COLOR_LIST_FOREGROUND);
		gc.setForeground(ink);
		if (selected) {
			gc.setBackground(system(SWT.COLOR_LIST_SELECTION));
			gc.fillRectangle(cell);
		}
		gc.setAlpha(LINE_ALPHA);
		gc.drawLine(cell.x + cell.width - 1, cell.y, cell.x + cell.width - 1, cell.y + cell.height - 1);
		gc.drawLine(cell.x, cell.y + cell.height - 1, cell.x + cell.width - 1, cell.y + cell.height - 1);
		gc.setAlpha(OPAQUE);
		int size = grid.cell();
		Image picture = pictures.picture(grid.chart(), entry, size, grid.getMonitor().getZoom(), ink.getRGB());
		if (picture != null) {
			gc.drawImage(picture, cell.x + (cell.width - size) / 2, cell.y);
			painted++;
		}
		if (labelHeight(size) > 0) {
			gc.setAlpha(selected ? OPAQUE : LABEL_ALPHA);
			String label = Shortened.of(gc, entry.label(), cell.width - 4);
			Point extent = gc.textExtent(label);
			gc.drawText(label, cell.x + (cell.width - extent.x) / 2, cell.y + size - 1, true);
			gc.setAlpha(OPAQUE);
		}
		if (selected && grid.isFocusControl()) {
			gc.setForeground(ThemeColour.BENCH_ACCENT.colour());
			gc.drawRectangle(cell.x, cell.y, cell.width - 1, cell.height - 1);
		}
	}

	private void paintNote(GC gc) {
		Rectangle area = grid.getClientArea();
		if (area.width > 2 * MARGIN_PX && !grid.note().isEmpty()) {
			TextLayout layout = new TextLayout(grid.getDisplay());
			layout.setFont(grid.getFont());
			layout.setText(grid.note());
			layout.setWidth(area.width - 2 * MARGIN_PX);
			gc.setForeground(system(SWT.COLOR_LIST_FOREGROUND));
			layout.draw(gc, MARGIN_PX, MARGIN_PX);
			layout.dispose();
		}
	}

	private Color system(int colour) {
		return grid.getDisplay().getSystemColor(colour);
	}
}
