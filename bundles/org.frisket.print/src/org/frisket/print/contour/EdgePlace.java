package org.frisket.print.contour;

/**
 * Where the edge of the art lies between a pixel of it and a neighbour that is none.
 * <p>
 * A pixel's coverage is the share of its area that belongs to the art. Summed across an edge, from a pixel that is wholly
 * art to one that is wholly none, the shares tell how far the art reaches in that row of pixels, on the average over the
 * row's height: for a straight edge that is where it meets the middle of the row, without an error. Where no whole pixel
 * is at hand, as in strokes thinner than a pixel, the place of half coverage between the centres has to do.
 */
final class EdgePlace {

	/** An edge may be blurred over twice so many pixels. */
	private static final int REACH = 6;
	private static final int RISE = 2;
	private static final int NEARLY_FULL = 230;
	private static final int NEARLY_NONE = 25;

	private final Coverage coverage;

	EdgePlace(Coverage coverage) {
		this.coverage = coverage;
	}

	/**
	 * Whether the edge between two neighbours runs more across the way from one to the other than along it. Only then the
	 * shares between them tell its place well.
	 */
	boolean isCrossed(int x, int y, int dx, int dy) {
		// from the tip of (dx, dy) a quarter turn on
		int sx = -dy;
		int sy = dx;
		int along = 2 * (coverage.at(x, y) - coverage.at(x + dx, y + dy));
		int across = 0;
		for (int side = -1; side <= 1; side += 2) {
			int inner = coverage.at(x + side * sx, y + side * sy);
			int outer = coverage.at(x + dx + side * sx, y + dy + side * sy);
			along += inner - outer;
			across += side * (inner + outer);
		}
		return along >= Math.abs(across);
	}

	/**
	 * @param x  of a pixel of the art
	 * @param dx with {@code dy}, the step to its neighbour
	 * @return how far from the pixel's centre the edge lies, in the direction of the neighbour
	 */
	double from(int x, int y, int dx, int dy) {
		int inner = 0;
		int full = coverage.at(x, y);
		while (full < Coverage.FULL && inner < REACH) {
			int next = coverage.at(x - (inner + 1) * dx, y - (inner + 1) * dy);
			if (next <= full + RISE) {
				break;
			}
			full = next;
			inner++;
		}
		int outer = 1;
		int none = coverage.at(x + dx, y + dy);
		while (none > 0 && outer < REACH) {
			int next = coverage.at(x + (outer + 1) * dx, y + (outer + 1) * dy);
			if (next >= none - RISE) {
				break;
			}
			none = next;
			outer++;
		}
		if (full < NEARLY_FULL || none > NEARLY_NONE) {
			return halfway(x, y, dx, dy);
		}
		double sum = 0;
		for (int step = -inner + 1; step < outer; step++) {
			sum += coverage.at(x + step * dx, y + step * dy) - none;
		}
		return 0.5 - inner + sum / (full - none);
	}

	/** Where the coverage, linear between the two centres, is one half. */
	double halfway(int x, int y, int dx, int dy) {
		double art = coverage.at(x, y);
		double none = coverage.at(x + dx, y + dy);
		return (art - (Coverage.HALF - 0.5)) / (art - none);
	}
}
