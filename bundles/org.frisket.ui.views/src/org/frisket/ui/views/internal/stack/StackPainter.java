package org.frisket.ui.views.internal.stack;

import java.util.List;

import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.OperationLook;
import org.frisket.ui.views.internal.ElementText;
import org.frisket.ui.views.internal.OperationText;
import org.frisket.ui.views.internal.SeverityText;

/** Paints the rows of the stack. A layer is a sheet seen from its edge; a hidden one is pulled aside. */
final class StackPainter {

	/** Width of the column with the eye, and of that with the pin. */
	static final int TOGGLE_PX = 24;
	static final int SPACE_PX = 4;

	private static final int SHEET_PX = 8;
	private static final int INDENT_PX = 2 * TOGGLE_PX + 4 * SPACE_PX;
	private static final int ICON_PX = 16;
	private static final int SAMPLE_PX = 28;
	private static final int FAINT = 110;
	private static final int OPAQUE = 255;

	private final GC gc;
	private final ResourceManager images;
	private final int lineHeight;

	StackPainter(GC gc, ResourceManager images) {
		this.gc = gc;
		this.images = images;
		lineHeight = gc.getFontMetrics().getHeight();
	}

	/** Height of a row of a layer where a line of text has this height. */
	static int layerHeight(int lineHeight) {
		return 2 * lineHeight + SHEET_PX + 5 * SPACE_PX;
	}

	static int elementHeight(int lineHeight) {
		return lineHeight + 2 * SPACE_PX;
	}

	/** Where the name stands in the row of a layer. */
	static Rectangle nameOf(Rectangle row, int lineHeight) {
		int x = row.x + 2 * TOGGLE_PX + SPACE_PX;
		return new Rectangle(x, row.y + SPACE_PX, Math.max(0, row.x + row.width - 2 * SPACE_PX - x), lineHeight);
	}

	static Rectangle eyeOf(Rectangle row) {
		return new Rectangle(row.x, row.y, TOGGLE_PX, TOGGLE_PX);
	}

	static Rectangle pinOf(Rectangle row) {
		return new Rectangle(row.x + TOGGLE_PX, row.y, TOGGLE_PX, TOGGLE_PX);
	}

	/** @param current whether the keys act on the row */
	void paintLayer(Rectangle row, Layer layer, LayerState state, boolean current, boolean focus) {
		if (current) {
			paintCurrent(row, focus);
		}
		Color ink = ink(current && focus);
		gc.setForeground(ink);
		eye(eyeOf(row), layer.isVisible());
		pin(pinOf(row), layer.isLocked());
		Rectangle name = nameOf(row, lineHeight);
		int right = findings(state.findings(), row.x + row.width - SPACE_PX, name.y);
		text(layer.getName() == null ? "" : layer.getName(), name.x, name.y, right - name.x, layer.isVisible()); //$NON-NLS-1$
		sheet(new Rectangle(name.x, name.y + lineHeight + SPACE_PX, name.width, SHEET_PX), layer, ink);
		operations(state, name.x, name.y + lineHeight + SHEET_PX + 2 * SPACE_PX, name.width, ink);
	}

	private void paintCurrent(Rectangle row, boolean focus) {
		gc.setBackground(system(focus ? SWT.COLOR_LIST_SELECTION : SWT.COLOR_WIDGET_BACKGROUND));
		gc.fillRectangle(row);
	}

	private static Color ink(boolean selected) {
		return system(selected ? SWT.COLOR_LIST_SELECTION_TEXT : SWT.COLOR_LIST_FOREGROUND);
	}

	private static Color system(int id) {
		return Display.getCurrent().getSystemColor(id);
	}

	private void eye(Rectangle box, boolean open) {
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

	private void pin(Rectangle box, boolean locked) {
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

	/** @return where the free room ends */
	private int findings(List<Finding> findings, int right, int y) {
		if (findings.isEmpty()) {
			return right;
		}
		String count = String.valueOf(findings.size());
		int x = right - gc.textExtent(count).x;
		gc.drawText(count, x, y, true);
		Image image = images.create(SeverityText.icon(findings.get(0).severity()).descriptor());
		x -= ICON_PX + SPACE_PX;
		gc.drawImage(image, x, y + (lineHeight - ICON_PX) / 2);
		return x - SPACE_PX;
	}

	private void text(String text, int x, int y, int width, boolean strong) {
		gc.setAlpha(strong ? OPAQUE : FAINT + 60);
		gc.drawText(shortened(text, width), x, y, true);
		gc.setAlpha(OPAQUE);
	}

	private String shortened(String text, int width) {
		if (gc.textExtent(text).x <= width) {
			return text;
		}
		int end = text.length();
		while (end > 0 && gc.textExtent(text.substring(0, end) + "\u2026").x > width) { //$NON-NLS-1$
			end = text.offsetByCodePoints(end, -1);
		}
		return text.substring(0, end) + "\u2026"; //$NON-NLS-1$
	}

	private void sheet(Rectangle place, Layer layer, Color ink) {
		Rectangle sheet = new Rectangle(place.x, place.y, place.width, place.height);
		if (!layer.isVisible()) {
			sheet.x += place.width / 2;
			sheet.width -= place.width / 2;
		}
		gc.setBackground(stock(layer));
		gc.setAlpha(layer.isVisible() ? OPAQUE : FAINT);
		gc.fillRectangle(sheet);
		gc.setForeground(ink);
		gc.setAlpha(FAINT);
		gc.drawRectangle(sheet.x, sheet.y, sheet.width - 1, sheet.height - 1);
		gc.setAlpha(OPAQUE);
	}

	private static Color stock(Layer layer) {
		String colour = layer.getColour();
		if (colour != null && colour.matches("#[0-9a-fA-F]{6}")) { //$NON-NLS-1$
			int rgb = Integer.parseInt(colour.substring(1), 16);
			return new Color(new RGB(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff));
		}
		return ThemeColour.BENCH_STOCK.colour();
	}

	private void operations(LayerState state, int x, int y, int width, Color ink) {
		String text = NLS.bind(Messages.StackPainter_parted, OperationText.of(state.operations()),
				pieces(state));
		int left = x;
		for (OperationKind kind : state.operations()) {
			sample(OperationLook.of(kind), left, y + lineHeight / 2, SAMPLE_PX);
			left += SAMPLE_PX + 2 * SPACE_PX;
		}
		gc.setForeground(ink);
		text(state.operations().isEmpty() ? pieces(state) : text, left, y, x + width - left, true);
	}

	private static String pieces(LayerState state) {
		if (state.pieces().isEmpty()) {
			return Messages.StackPainter_uncounted;
		}
		int pieces = state.pieces().getAsInt();
		return pieces == 1 ? Messages.StackPainter_onePiece : NLS.bind(Messages.StackPainter_pieces, pieces);
	}

	/** A length of the operation's line, on the sheet's own ground so that its hue is always the same. */
	private void sample(OperationLook look, int x, int y, int length) {
		int half = 4;
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(x - 2, y - half, length + 4, 2 * half + 1);
		gc.setForeground(look.hue().colour());
		gc.setLineWidth(Math.max(2, look.widthPx()));
		if (look.isDouble()) {
			gc.setLineWidth(1);
			gc.drawLine(x, y - 1, x + length, y - 1);
			gc.drawLine(x, y + 1, x + length, y + 1);
		} else {
			gc.setLineDash(look.dash());
			gc.drawLine(x, y, x + length, y);
			gc.setLineDash(null);
		}
		gc.setLineWidth(1);
	}

	void paintElement(Rectangle row, Row element, List<Finding> findings, boolean selected, boolean current,
			boolean focus) {
		if (selected) {
			gc.setBackground(system(SWT.COLOR_LIST_SELECTION));
			gc.fillRectangle(row);
		}
		gc.setForeground(ink(selected));
		int y = row.y + SPACE_PX;
		int right = findings(findings, row.x + row.width - SPACE_PX, y);
		int x = row.x + INDENT_PX;
		text(ElementText.of(element.element()), x, y, right - x,
				element.layer().isVisible() && !element.layer().isLocked());
		if (current && focus) {
			gc.drawFocus(row.x + 1, row.y + 1, row.width - 2, row.height - 2);
		}
	}

	/** Where a dragged layer would come to lie. */
	void paintDrop(int y, int width) {
		gc.setBackground(ThemeColour.BENCH_SELECTION.colour());
		gc.fillRectangle(0, y - 1, width, 3);
	}

	/** A layer on its way. */
	void paintDragged(Layer layer, Point at, int width) {
		gc.setBackground(stock(layer));
		gc.setAlpha(OPAQUE * 3 / 4);
		gc.fillRectangle(2 * TOGGLE_PX, at.y - SHEET_PX / 2, width - 2 * TOGGLE_PX, SHEET_PX);
		gc.setAlpha(OPAQUE);
	}
}
