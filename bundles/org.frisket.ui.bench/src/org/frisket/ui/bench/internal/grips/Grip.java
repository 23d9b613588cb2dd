package org.frisket.ui.bench.internal.grips;

import org.eclipse.draw2d.Cursors;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;

/** Where a grip sits on the box around the selection: at a corner, in the middle of a side, or on the stem above. */
public enum Grip {

	TOP_LEFT(-1, -1), TOP(0, -1), TOP_RIGHT(1, -1), LEFT(-1, 0), RIGHT(1, 0), BOTTOM_LEFT(-1, 1), BOTTOM(0, 1),
	BOTTOM_RIGHT(1, 1), TURN(0, -1);

	private final int across;
	private final int down;

	Grip(int across, int down) {
		this.across = across;
		this.down = down;
	}

	/** -1 on the left side of the box, 1 on the right one, 0 between. */
	public int across() {
		return across;
	}

	/** -1 on the top side of the box, 1 on the bottom one, 0 between. */
	public int down() {
		return down;
	}

	public boolean isCorner() {
		return across != 0 && down != 0;
	}

	public boolean isSide() {
		return !isCorner() && this != TURN;
	}

	/** Its place on the box itself. */
	Point on(Bounds box) {
		return new Point(box.centre().x() + across * box.width() / 2, box.centre().y() + down * box.height() / 2);
	}

	/** The place across from it, which stays where it is. */
	Point across(Bounds box) {
		return new Point(box.centre().x() - across * box.width() / 2, box.centre().y() - down * box.height() / 2);
	}

	Cursor cursor() {
		return switch (this) {
		case TOP_LEFT -> Cursors.SIZENW;
		case TOP -> Cursors.SIZEN;
		case TOP_RIGHT -> Cursors.SIZENE;
		case LEFT -> Cursors.SIZEW;
		case RIGHT -> Cursors.SIZEE;
		case BOTTOM_LEFT -> Cursors.SIZESW;
		case BOTTOM -> Cursors.SIZES;
		case BOTTOM_RIGHT -> Cursors.SIZESE;
		case TURN -> Cursors.HAND;
		};
	}
}
