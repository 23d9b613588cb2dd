package org.frisket.ui.bench.internal.canvas;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Rectangles of a canvas that are to be painted anew. Those that lie together are joined, those far apart are not: a
 * thin line across the bench and a box beside it are far less than the box around both. They may overlap.
 */
public final class Pieces {

	/** Of more than that the box around all is painted. */
	public static final int MOST = 24;
	/** What it costs to begin another piece, in painted pixels. */
	private static final long BEGIN_PX = 64 * 64;

	private final List<Rectangle> all = new ArrayList<>();

	/** @param piece left alone; nothing is added if it is empty */
	public void add(Rectangle piece) {
		if (piece.isEmpty()) {
			return;
		}
		Rectangle grown = piece.getCopy();
		// what has grown may now reach another one
		for (int i = 0; i < all.size();) {
			Rectangle joined = all.get(i).getUnion(grown);
			if (area(joined) <= area(all.get(i)) + area(grown) + BEGIN_PX) {
				grown = joined;
				all.remove(i);
				i = 0;
			} else {
				i++;
			}
		}
		all.add(grown);
		if (all.size() > MOST) {
			Rectangle box = box();
			all.clear();
			all.add(box);
		}
	}

	private static long area(Rectangle rectangle) {
		return (long) rectangle.width * rectangle.height;
	}

	/** Around all; empty if there is none. */
	public Rectangle box() {
		Rectangle box = all.isEmpty() ? new Rectangle() : all.get(0).getCopy();
		all.forEach(box::union);
		return box;
	}

	/** Those there are, which are forgotten here. */
	public List<Rectangle> take() {
		List<Rectangle> taken = List.copyOf(all);
		all.clear();
		return taken;
	}
}
