package org.frisket.ui.orders.internal.book;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.AbstractCellPainter;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.frisket.orders.Entry;
import org.frisket.orders.desk.BookGroup;
import org.frisket.ui.Icon;
import org.frisket.ui.ThemeColour;

/**
 * Paints what is in the rows of the order book. Colours are asked for at each paint, so that a change of the theme is
 * followed; there are no lines between cells.
 */
final class BookPainter extends AbstractCellPainter {

	static final int SPACE_PX = 4;
	private static final int SIGN_PX = 16;
	private static final int ARM_PX = 4;
	private static final int FADED = 170;
	private static final int OPAQUE = 255;

	private final BookGrid grid;
	private final Image caution;
	private final Image sheet;

	BookPainter(BookGrid grid, Control owner) {
		this.grid = grid;
		LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources(), owner);
		caution = images.create(Icon.CAUTION.descriptor());
		sheet = images.create(BookImages.SHEET.descriptor());
	}

	@Override
	public int getPreferredWidth(ILayerCell cell, GC gc, IConfigRegistry registry) {
		return gc.textExtent(String.valueOf(cell.getDataValue())).x + 4 * SPACE_PX;
	}

	@Override
	public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry registry) {
		return grid.rowHeight();
	}

	@Override
	public void paintCell(ILayerCell cell, GC gc, Rectangle bounds, IConfigRegistry registry) {
		int row = cell.getRowIndex();
		if (row >= grid.lines().size()) {
			return;
		}
		Rectangle clip = gc.getClipping();
		gc.setClipping(bounds.intersection(clip));
		boolean selected = DisplayMode.SELECT.equals(cell.getDisplayMode());
		boolean strong = selected && grid.table().isFocusControl();
		Display display = gc.getDevice() instanceof Display screen ? screen : Display.getCurrent();
		gc.setFont(grid.table().getFont());
		gc.setBackground(ground(display, selected, strong));
		gc.fillRectangle(bounds);
		Color ink = display.getSystemColor(strong ? SWT.COLOR_LIST_SELECTION_TEXT : SWT.COLOR_LIST_FOREGROUND);
		gc.setForeground(ink);
		if (grid.lines().job(row).isPresent()) {
			paint(gc, bounds, grid.lines().job(row).get(), GridColumn.values()[cell.getColumnIndex()], strong);
		} else {
			heading(gc, bounds, cell, grid.lines().group(row).orElseThrow(), ink);
		}
		if (selected && !strong && cell.getColumnIndex() == 0) {
			// told by a bar as well as by its ground
			gc.setBackground(ThemeColour.BENCH_ACCENT.colour());
			gc.fillRectangle(bounds.x, bounds.y, 3, bounds.height);
		}
		gc.setClipping(clip);
	}

	private static Color ground(Display display, boolean selected, boolean strong) {
		if (strong) {
			return display.getSystemColor(SWT.COLOR_LIST_SELECTION);
		}
		return display.getSystemColor(selected ? SWT.COLOR_WIDGET_BACKGROUND : SWT.COLOR_LIST_BACKGROUND);
	}

	private void paint(GC gc, Rectangle bounds, Entry job, GridColumn column, boolean strong) {
		if (column == GridColumn.PICTURE) {
			Image picture = grid.picture(job).orElse(sheet);
			Rectangle size = picture.getBounds();
			if (picture != sheet) {
				// dark stock would be lost on a dark ground
				gc.setBackground(gc.getDevice().getSystemColor(SWT.COLOR_WHITE));
				gc.fillRectangle(bounds.x + (bounds.width - Thumbnails.WIDTH_PX) / 2 - SPACE_PX / 2,
						bounds.y + (bounds.height - Thumbnails.HEIGHT_PX) / 2, Thumbnails.WIDTH_PX + SPACE_PX,
						Thumbnails.HEIGHT_PX);
			}
			gc.drawImage(picture, bounds.x + (bounds.width - size.width) / 2,
					bounds.y + (bounds.height - size.height) / 2);
			return;
		}
		String text = grid.text().of(job, column, grid.today());
		int left = bounds.x + 2 * SPACE_PX;
		boolean late = column == GridColumn.DUE && job.isLate(grid.today());
		if (late) {
			gc.drawImage(caution, left, bounds.y + (bounds.height - SIGN_PX) / 2);
			left += SIGN_PX + SPACE_PX;
			if (!strong) {
				gc.setForeground(ThemeColour.FINDING_MESSAGE.colour());
			}
		}
		if (job.isClosed() && !strong) {
			gc.setAlpha(FADED);
		}
		text(gc, bounds, text, left, column.isFigures());
		gc.setAlpha(OPAQUE);
	}

	private static void text(GC gc, Rectangle bounds, String text, int left, boolean atRight) {
		int room = bounds.x + bounds.width - 2 * SPACE_PX - left;
		String shown = shortened(gc, text.replace('\n', ' '), room);
		Point size = gc.textExtent(shown);
		int x = atRight ? left + Math.max(0, room - size.x) : left;
		gc.drawText(shown, x, bounds.y + (bounds.height - size.y) / 2, true);
	}

	/** As much of a text as there is room for; by halves, for titles may be long. */
	static String shortened(GC gc, String text, int room) {
		if (gc.textExtent(text).x <= room) {
			return text;
		}
		int fits = 0;
		int tooLong = text.length();
		while (tooLong - fits > 1) {
			int middle = (fits + tooLong) / 2;
			if (gc.textExtent(text.substring(0, middle) + '\u2026').x <= room) {
				fits = middle;
			} else {
				tooLong = middle;
			}
		}
		return fits == 0 ? "" : text.substring(0, fits).strip() + '\u2026'; //$NON-NLS-1$
	}

	/** Goes through all columns: each cell paints its part of it. */
	private void heading(GC gc, Rectangle bounds, ILayerCell cell, BookGroup group, Color ink) {
		int start = bounds.x - grid.startOf(cell.getColumnIndex());
		int middle = bounds.y + bounds.height / 2;
		int x = start + 2 * SPACE_PX;
		gc.setBackground(ink);
		gc.fillPolygon(grid.lines().isFolded(group)
				? new int[] { x, middle - ARM_PX, x + ARM_PX, middle, x, middle + ARM_PX }
				: new int[] { x - 1, middle - 2, x + 2 * ARM_PX - 1, middle - 2, x + ARM_PX - 1, middle + 2 });
		gc.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		String text = grid.text().heading(group);
		Point size = gc.textExtent(text);
		gc.drawText(text, x + 3 * ARM_PX, bounds.y + (bounds.height - size.y) / 2, true);
		gc.setForeground(ThemeColour.BENCH_ACCENT.colour());
		gc.drawLine(bounds.x, bounds.y + bounds.height - 1, bounds.x + bounds.width, bounds.y + bounds.height - 1);
	}
}
