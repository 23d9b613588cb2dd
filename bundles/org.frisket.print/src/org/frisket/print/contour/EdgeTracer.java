package org.frisket.print.contour;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import org.frisket.geometry.Monitor;

/**
 * Follows the edges of the art between the pixels that are art and those that are none (marching squares), with the art
 * always on the same side, and says where they lie far finer than a pixel. Where four pixels meet with art in two opposite
 * corners, the mean of all four decides whether the art is joined there; so a picture that is turned or mirrored has the
 * same edges.
 */
final class EdgeTracer {

	/** Of all rings together; they take 16 bytes each here, and many times that when they are fitted. */
	static final int MOST_POINTS = 4_000_000;
	/** With fewer points that are told well, those that are told roughly have to do. */
	private static final int FEWEST = 8;

	private final Coverage coverage;
	private final EdgePlace places;
	private final double leastExtent;
	private final double leastArea;
	/** By the art pixel, those whose left neighbour is none and whose edge there was followed. */
	private final BitSet followed;
	private final Ring.Builder precise = new Ring.Builder();
	private final Ring.Builder all = new Ring.Builder();
	private int dropped;

	/**
	 * @param leastExtent rings whose box has no side this long, in pixels, are left out
	 * @param leastArea   rings that enclose less, in square pixels, are left out
	 */
	EdgeTracer(Coverage coverage, double leastExtent, double leastArea) {
		this.coverage = coverage;
		this.leastExtent = leastExtent;
		this.leastArea = leastArea;
		places = new EdgePlace(coverage);
		followed = new BitSet(coverage.width() * coverage.height());
	}

	/** How many rings were left out. */
	int dropped() {
		return dropped;
	}

	/**
	 * All rings, by the first of their pixels. Those round art run counter-clockwise to the viewer, those round holes
	 * clockwise.
	 *
	 * @return null if there are more than {@link #MOST_POINTS} points
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	List<Ring> rings(Monitor monitor) {
		List<Ring> rings = new ArrayList<>();
		long points = 0;
		for (int y = 0; y < coverage.height(); y++) {
			monitor.check();
			boolean before = false;
			for (int x = 0; x < coverage.width(); x++) {
				boolean art = coverage.isArt(x, y);
				if (art && !before && !followed.get(y * coverage.width() + x)) {
					Ring ring = follow(x, y);
					if (ring.size() < 3 || ring.extent() < leastExtent || Math.abs(ring.signedArea()) < leastArea) {
						dropped++;
					} else {
						rings.add(ring);
						points += ring.size();
						if (points > MOST_POINTS) {
							return null;
						}
					}
				}
				before = art;
			}
			monitor.worked((y + 1.0) / coverage.height());
		}
		return rings;
	}

	/** From the left edge of an art pixel downwards, the art on the left hand of who goes along. */
	private Ring follow(int startX, int startY) {
		precise.clear();
		all.clear();
		int x = startX;
		int y = startY;
		int dx = -1;
		int dy = 0;
		do {
			note(x, y, dx, dy);
			// a quarter turn from the neighbour: art is on the other hand
			int aheadX = dy;
			int aheadY = -dx;
			boolean inner = coverage.isArt(x + aheadX, y + aheadY);
			boolean outer = coverage.isArt(x + dx + aheadX, y + dy + aheadY);
			if (outer && (inner || isJoined(x, y, dx + aheadX, dy + aheadY))) {
				x += dx + aheadX;
				y += dy + aheadY;
				dx = -aheadX;
				dy = -aheadY;
			} else if (inner) {
				x += aheadX;
				y += aheadY;
			} else {
				dx = aheadX;
				dy = aheadY;
			}
		} while (x != startX || y != startY || dx != -1 || dy != 0);
		return (precise.size() < FEWEST ? all : precise).build();
	}

	/** Whether two opposite pixels of art are joined where they meet. */
	private boolean isJoined(int x, int y, int dx, int dy) {
		return coverage.at(x, y) + coverage.at(x + dx, y) + coverage.at(x, y + dy) + coverage.at(x + dx, y + dy) >= 4
				* Coverage.HALF - 2;
	}

	private void note(int x, int y, int dx, int dy) {
		if (dx == -1) {
			followed.set(y * coverage.width() + x);
		}
		if (places.isCrossed(x, y, dx, dy)) {
			double step = places.from(x, y, dx, dy);
			precise.add(x + 0.5 + step * dx, y + 0.5 + step * dy);
		}
		double half = places.halfway(x, y, dx, dy);
		all.add(x + 0.5 + half * dx, y + 0.5 + half * dy);
	}
}
