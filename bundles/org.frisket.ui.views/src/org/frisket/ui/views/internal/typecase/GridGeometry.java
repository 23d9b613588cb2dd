package org.frisket.ui.views.internal.typecase;

import org.eclipse.swt.graphics.Rectangle;

/**
 * Where the cells of a grid are, in pixels; rows are as wide as the room, and the rest of it is shared out.
 *
 * @param width  of the room
 * @param height of the room
 * @param cell   the least width of a cell
 * @param label  height of what stands below the picture
 * @param count  of cells
 */
record GridGeometry(int width, int height, int cell, int label, int count) {

	int columns() {
		return Math.max(1, width / cell);
	}

	int rows() {
		return (count + columns() - 1) / columns();
	}

	int rowHeight() {
		return cell + label;
	}

	/** Of all rows. */
	int contentHeight() {
		return rows() * rowHeight();
	}

	/** How far it can be scrolled. */
	int furthest() {
		return Math.max(0, contentHeight() - height);
	}

	/** How many whole rows are seen, at least one. */
	int rowsOnPage() {
		return Math.max(1, height / rowHeight());
	}

	Rectangle bounds(int index, int scrolled) {
		int column = index % columns();
		int left = column * width / columns();
		int right = (column + 1) * width / columns();
		return new Rectangle(left, index / columns() * rowHeight() - scrolled, Math.max(cell, right - left),
				rowHeight());
	}

	/** The cell at a place; -1 for none. */
	int at(int x, int y, int scrolled) {
		if (x < 0 || x >= width || y + scrolled < 0) {
			return -1;
		}
		int row = (y + scrolled) / rowHeight();
		for (int column = 0; column < columns(); column++) {
			int index = row * columns() + column;
			if (index < count && bounds(index, scrolled).contains(x, y)) {
				return index;
			}
		}
		return -1;
	}

	/** The first cell of the first row that is seen at least in part. */
	int firstSeen(int scrolled) {
		return Math.min(count, scrolled / rowHeight() * columns());
	}

	/** After the last cell that is seen at least in part. */
	int afterSeen(int scrolled) {
		return Math.min(count, ((scrolled + height) / rowHeight() + 1) * columns());
	}

	/** How it is to be scrolled so that a cell is seen whole, as little as possible. */
	int revealing(int index, int scrolled) {
		int top = index / columns() * rowHeight();
		return Math.max(0, Math.min(furthest(), Math.max(top + rowHeight() - height, Math.min(scrolled, top))));
	}
}
