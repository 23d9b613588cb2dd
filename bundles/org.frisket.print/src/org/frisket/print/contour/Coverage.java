package org.frisket.print.contour;

/** How much of each pixel belongs to the art, from 0 to 255, in rows from the top. Around the picture there is none. */
record Coverage(int width, int height, byte[] share) {

	/** What covers this much of a pixel counts as art. */
	static final int HALF = 128;
	static final int FULL = 255;

	int at(int x, int y) {
		return x < 0 || y < 0 || x >= width || y >= height ? 0 : share[y * width + x] & 0xff;
	}

	boolean isArt(int x, int y) {
		return at(x, y) >= HALF;
	}
}
