package org.frisket.ui.views.internal.stack;

import org.eclipse.swt.graphics.Rectangle;

/**
 * Where things stand in a row: eye and pin, the brackets of groups, the name, and at the right end the threads of mats.
 * All in pixels.
 */
final class RowLayout {

	/** Width of the column with the eye, and of that with the pin. */
	static final int TOGGLE_PX = 24;
	static final int SPACE_PX = 4;
	static final int SHEET_PX = 8;
	/** Where the column with the brackets begins. */
	static final int BRACKETS_PX = 2 * TOGGLE_PX;
	/** Width of the column with the threads. */
	static final int THREADS_PX = 28;

	private static final int NAME_PX = BRACKETS_PX + 4 * SPACE_PX;
	/** Both edges, and the colour between them. */
	private static final int THINNEST_PX = 3;
	private static final int PX_PER_MM = 16;
	private static final int INDENT_PX = 2 * SPACE_PX;

	private RowLayout() {
	}

	/** Height of a row of a layer where a line of text has this height. */
	static int layerHeight(int lineHeight) {
		return 2 * lineHeight + SHEET_PX + 5 * SPACE_PX;
	}

	static int elementHeight(int lineHeight) {
		return lineHeight + 2 * SPACE_PX;
	}

	/** Where the name stands, up to the right end of what the row may say. */
	static Rectangle nameOf(Rectangle place, Row row, int lineHeight) {
		int x = place.x + NAME_PX + (row.isLayer() ? 0 : INDENT_PX);
		return new Rectangle(x, place.y + SPACE_PX, Math.max(0, place.x + place.width - THREADS_PX - x), lineHeight);
	}

	/**
	 * How thick a sheet of so many mm is drawn: paper, card and board can be told apart, and there is room for all.
	 *
	 * @param caliperMm 0 for one that is not known
	 */
	static int sheetPx(double caliperMm) {
		return caliperMm > 0 ? (int) Math.max(THINNEST_PX, Math.min(SHEET_PX, Math.round(caliperMm * PX_PER_MM))) : SHEET_PX;
	}

	/** Where the sheet of a layer is seen from its edge. */
	static Rectangle sheetOf(Rectangle place, Row row, int lineHeight) {
		Rectangle name = nameOf(place, row, lineHeight);
		return new Rectangle(name.x, name.y + lineHeight + SPACE_PX, name.width, SHEET_PX);
	}

	static Rectangle eyeOf(Rectangle place) {
		return new Rectangle(place.x, place.y, TOGGLE_PX, Math.min(TOGGLE_PX, place.height));
	}

	static Rectangle pinOf(Rectangle place) {
		return new Rectangle(place.x + TOGGLE_PX, place.y, TOGGLE_PX, Math.min(TOGGLE_PX, place.height));
	}

	/** The part of the row in which the brackets of groups run. */
	static Rectangle bracketsOf(Rectangle place) {
		return new Rectangle(place.x + BRACKETS_PX, place.y, NAME_PX - BRACKETS_PX, place.height);
	}
}
