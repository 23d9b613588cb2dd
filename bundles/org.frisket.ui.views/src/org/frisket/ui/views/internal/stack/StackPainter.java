package org.frisket.ui.views.internal.stack;

import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.ui.OperationName;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.OperationLook;
import org.frisket.ui.views.StockNotes;
import org.frisket.ui.views.internal.ElementText;

/** Paints the rows of the stack. A layer is a sheet seen from its edge; a hidden one is pulled aside. */
final class StackPainter {

	private static final int SPACE_PX = RowLayout.SPACE_PX;
	private static final int SAMPLE_PX = 28;
	private static final int SHORT_SAMPLE_PX = 16;

	private final GC gc;
	private final RowMarks marks;
	private final int lineHeight;

	StackPainter(GC gc, ResourceManager images) {
		this.gc = gc;
		marks = new RowMarks(gc, images);
		lineHeight = marks.lineHeight();
	}

	/** @param current whether the keys act on the row */
	void paintLayer(Rectangle place, Row row, RowState state, boolean current, boolean focus) {
		Layer layer = row.layer();
		if (current) {
			gc.setBackground(RowMarks.system(focus ? SWT.COLOR_LIST_SELECTION : SWT.COLOR_WIDGET_BACKGROUND));
			gc.fillRectangle(place);
		}
		Color ink = RowMarks.ink(current && focus);
		gc.setForeground(ink);
		marks.eye(RowLayout.eyeOf(place), layer.isVisible());
		marks.pin(RowLayout.pinOf(place), layer.isLocked());
		Rectangle name = RowLayout.nameOf(place, row, lineHeight);
		int right = marks.findings(state.findings(), name.x + name.width, name.y);
		marks.text(titleOf(layer, state), name.x, name.y, right - name.x, layer.isVisible());
		Rectangle room = RowLayout.sheetOf(place, row, lineHeight);
		int thick = RowLayout.sheetPx(state.stock().map(StockNotes.Note::caliperMm).orElse(0.0));
		sheet(new Rectangle(room.x, room.y + room.height - thick, room.width, thick), layer, ink);
		operations(state, name.x, name.y + lineHeight + RowLayout.SHEET_PX + 2 * SPACE_PX, name.width, ink);
	}

	/** The stock by its name, or by its id where the studio has none of it. */
	static String titleOf(Layer layer, RowState state) {
		String name = layer.getName() == null ? "" : layer.getName(); //$NON-NLS-1$
		return layer.getStock() == null ? name : NLS.bind(Messages.StackPainter_parted, name,
				state.stock().map(StockNotes.Note::name).orElse(layer.getStock()));
	}

	private void sheet(Rectangle place, Layer layer, Color ink) {
		Rectangle sheet = new Rectangle(place.x, place.y, place.width, place.height);
		if (!layer.isVisible()) {
			sheet.x += place.width / 2;
			sheet.width -= place.width / 2;
		}
		gc.setBackground(RowMarks.stock(layer));
		gc.setAlpha(layer.isVisible() ? RowMarks.OPAQUE : RowMarks.FAINT);
		gc.fillRectangle(sheet);
		gc.setForeground(ink);
		gc.setAlpha(RowMarks.FAINT);
		gc.drawRectangle(sheet.x, sheet.y, sheet.width - 1, sheet.height - 1);
		gc.setAlpha(RowMarks.OPAQUE);
	}

	private void operations(RowState state, int x, int y, int width, Color ink) {
		String text = NLS.bind(Messages.StackPainter_parted, OperationName.of(state.operations()), pieces(state));
		int left = x;
		// short where long ones leave no room for the words; of many, as many as there is room for
		int kinds = state.operations().size();
		int length = kinds * (SAMPLE_PX + 2 * SPACE_PX) + gc.textExtent(text).x <= width ? SAMPLE_PX : SHORT_SAMPLE_PX;
		for (OperationKind kind : state.operations()) {
			if (left + length <= x + width) {
				marks.sample(OperationLook.of(kind), left, y + lineHeight / 2, length);
			}
			left += length + 2 * SPACE_PX;
		}
		gc.setForeground(ink);
		if (left + SAMPLE_PX <= x + width) {
			marks.text(state.operations().isEmpty() ? pieces(state) : text, left, y, x + width - left, true);
		}
	}

	static String pieces(RowState state) {
		if (state.pieces().isEmpty()) {
			return Messages.StackPainter_uncounted;
		}
		int pieces = state.pieces().getAsInt();
		return pieces == 1 ? Messages.StackPainter_onePiece : NLS.bind(Messages.StackPainter_pieces, pieces);
	}

	/** The number of pieces is written where there is room for it beside the whole name. */
	void paintElement(Rectangle place, Row row, RowState state, boolean selected, boolean current, boolean focus) {
		if (selected) {
			gc.setBackground(RowMarks.system(SWT.COLOR_LIST_SELECTION));
			gc.fillRectangle(place);
		}
		gc.setForeground(RowMarks.ink(selected));
		marks.eye(RowLayout.eyeOf(place), row.element().isVisible());
		marks.pin(RowLayout.pinOf(place), row.element().isLocked());
		Rectangle name = RowLayout.nameOf(place, row, lineHeight);
		int right = marks.findings(state.findings(), name.x + name.width, name.y);
		for (OperationKind kind : state.operations()) {
			right -= SHORT_SAMPLE_PX + 2 * SPACE_PX;
			marks.sample(OperationLook.of(kind), right + SPACE_PX, name.y + lineHeight / 2, SHORT_SAMPLE_PX);
		}
		String text = ElementText.of(row.element());
		String pieces = pieces(state);
		int room = gc.textExtent(pieces).x + 2 * SPACE_PX;
		if (state.pieces().orElse(0) > 0 && gc.textExtent(text).x + room <= right - name.x) {
			marks.text(pieces, right - room + SPACE_PX, name.y, room, selected);
		}
		boolean strong = row.layer().isVisible() && row.isVisible() && !row.layer().isLocked() && !row.isLocked();
		marks.text(text, name.x, name.y, right - name.x - SPACE_PX, strong || selected);
		if (current && focus) {
			gc.drawFocus(place.x + 1, place.y + 1, place.width - 2, place.height - 2);
		}
	}

	/** Where something that is dragged would come to lie. */
	void paintDrop(int x, int y, int width) {
		gc.setBackground(ThemeColour.BENCH_ACCENT.colour());
		gc.fillRectangle(x, y - 1, width - x, 3);
	}

	/** A layer on its way. */
	void paintDragged(Layer layer, Point at, int width) {
		gc.setBackground(RowMarks.stock(layer));
		gc.setAlpha(RowMarks.OPAQUE * 3 / 4);
		gc.fillRectangle(RowLayout.BRACKETS_PX, at.y - RowLayout.SHEET_PX / 2, width - RowLayout.BRACKETS_PX,
				RowLayout.SHEET_PX);
		gc.setAlpha(RowMarks.OPAQUE);
	}

	/** Words beside the pointer, kept within the width. */
	void paintTag(String text, Point at, int width) {
		Point size = gc.textExtent(text);
		int x = Math.max(0, Math.min(at.x - size.x - 4 * SPACE_PX, width - size.x - 2 * SPACE_PX));
		int y = Math.max(0, at.y - size.y / 2 - SPACE_PX / 2);
		gc.setBackground(ThemeColour.BENCH_TAG.colour());
		gc.fillRectangle(x, y, size.x + 2 * SPACE_PX, size.y + SPACE_PX);
		gc.setForeground(ThemeColour.BENCH_TAG_TEXT.colour());
		gc.drawText(text, x + SPACE_PX, y + SPACE_PX / 2, true);
		// where the ground of the list is that of the tag
		gc.drawRectangle(x, y, size.x + 2 * SPACE_PX - 1, size.y + SPACE_PX - 1);
	}
}
