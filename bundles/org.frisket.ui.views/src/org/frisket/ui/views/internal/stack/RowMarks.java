package org.frisket.ui.views.internal.stack;

import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.frisket.model.Layer;
import org.frisket.prepare.Finding;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.OperationLook;
import org.frisket.ui.views.internal.SeverityText;
import org.frisket.ui.views.internal.Shortened;

/** The signs that rows are made of, each painted in the colour the context has. */
final class RowMarks {

	static final int FAINT = 145;
	static final int OPAQUE = 255;

	private static final int ICON_PX = 16;
	static final int FADED = 185;

	private final GC gc;
	private final ResourceManager images;
	private final int lineHeight;

	RowMarks(GC gc, ResourceManager images) {
		this.gc = gc;
		this.images = images;
		lineHeight = gc.getFontMetrics().getHeight();
	}

	int lineHeight() {
		return lineHeight;
	}

	static Color system(int id) {
		return Display.getCurrent().getSystemColor(id);
	}

	static Color ink(boolean selected) {
		return system(selected ? SWT.COLOR_LIST_SELECTION_TEXT : SWT.COLOR_LIST_FOREGROUND);
	}

	void eye(Rectangle box, boolean open) {
		int x = box.x + box.width / 2;
		int y = box.y + box.height / 2;
		gc.setAntialias(SWT.ON);
		gc.setLineWidth(1);
		if (open) {
			gc.drawArc(x - 7, y - 4, 14, 10, 20, 140);
			gc.drawArc(x - 7, y - 6, 14, 10, 200, 140);
			gc.setBackground(gc.getForeground());
			gc.fillOval(x - 2, y - 2, 5, 5);
		} else {
			gc.drawArc(x - 7, y - 6, 14, 10, 200, 140);
			gc.drawLine(x - 4, y + 4, x - 5, y + 6);
			gc.drawLine(x, y + 5, x, y + 7);
			gc.drawLine(x + 4, y + 4, x + 5, y + 6);
		}
	}

	void pin(Rectangle box, boolean locked) {
		int x = box.x + box.width / 2;
		int y = box.y + box.height / 2;
		gc.setAlpha(locked ? OPAQUE : FAINT);
		gc.drawLine(x, y, x, y + 7);
		if (locked) {
			gc.setBackground(gc.getForeground());
			gc.fillOval(x - 4, y - 7, 9, 9);
		} else {
			gc.drawOval(x - 4, y - 7, 8, 8);
		}
		gc.setAlpha(OPAQUE);
	}

	/** How much room the sign and the number of findings take; 0 for none. */
	int findingsWidth(List<Finding> findings) {
		return findings.isEmpty() ? 0
				: gc.textExtent(String.valueOf(findings.size())).x + ICON_PX + 2 * RowLayout.SPACE_PX;
	}

	/** @return where the free room ends */
	int findings(List<Finding> findings, int right, int y) {
		if (findings.isEmpty()) {
			return right;
		}
		String count = String.valueOf(findings.size());
		int x = right - gc.textExtent(count).x;
		gc.drawText(count, x, y, true);
		Image image = images.create(SeverityText.icon(findings.get(0).severity()).descriptor());
		x -= ICON_PX + RowLayout.SPACE_PX;
		gc.drawImage(image, x, y + (lineHeight - ICON_PX) / 2);
		return x - RowLayout.SPACE_PX;
	}

	void text(String text, int x, int y, int width, boolean strong) {
		gc.setAlpha(strong ? OPAQUE : FADED);
		gc.drawText(Shortened.of(gc, text, width), x, y, true);
		gc.setAlpha(OPAQUE);
	}

	static Color stock(Layer layer) {
		String colour = layer.getColour();
		if (colour != null && colour.matches("#[0-9a-fA-F]{6}")) { //$NON-NLS-1$
			int rgb = Integer.parseInt(colour.substring(1), 16);
			return new Color(new RGB(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff));
		}
		return ThemeColour.BENCH_STOCK.colour();
	}

	/** A length of the operation's line, on the sheet's own ground so that its hue is always the same. */
	void sample(OperationLook look, int x, int y, int length) {
		int half = 4;
		Color ink = gc.getForeground();
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(x - 2, y - half, length + 4, 2 * half + 1);
		gc.setForeground(look.hue().colour());
		gc.setLineWidth(Math.max(2, look.widthPx()));
		if (look.isDouble()) {
			gc.setLineWidth(1);
			gc.drawLine(x, y - 1, x + length, y - 1);
			gc.drawLine(x, y + 1, x + length, y + 1);
		} else {
			gc.setLineDash(fitting(look.dash(), length));
			gc.drawLine(x, y, x + length, y);
			gc.setLineDash(null);
		}
		gc.setLineWidth(1);
		gc.setForeground(ink);
	}

	/** A pattern of which less than twice would be seen is drawn at half its size, so that it is one still. */
	private static int[] fitting(int[] dash, int length) {
		return dash == null || 2 * IntStream.of(dash).sum() <= length ? dash
				: IntStream.of(dash).map(part -> (part + 1) / 2).toArray();
	}
}
