package org.frisket.print.picture;

import org.frisket.print.internal.drawn.DrawnArt;

/** With how many pixels art is drawn that has none of its own. */
final class DrawnHead {

	/** Dots to the inch. At that many, the edge of art is found within 0.01 mm, which is finer than a blade follows. */
	static final double FINEST = 1200;
	/** Larger art is drawn coarser, in so many pixels: A5 has 700 dots to the inch then, A4 nearly 500, A3 350. */
	static final int USUAL_PIXELS = 24_000_000;

	private static final double MM_PER_INCH = 25.4;

	private DrawnHead() {
	}

	/** At its true size. */
	static Head usual(DrawnArt art) {
		return printed(art, art.width());
	}

	/** @param width that it is printed in, mm */
	static Head printed(DrawnArt art, double width) {
		double scale = width / art.width();
		double inches = width * art.height() * scale / (MM_PER_INCH * MM_PER_INCH);
		return at(art, scale * Math.min(FINEST, Math.sqrt(USUAL_PIXELS / inches)));
	}

	/** In whole pixels, so that across and down it is a little more or less. */
	static Head at(DrawnArt art, double dpi) {
		return of(art, pixels(art.width(), dpi), pixels(art.height(), dpi));
	}

	/** @param width in pixels */
	static Head wide(DrawnArt art, int width) {
		return of(art, width, (int) Math.max(1, Math.round(width * art.height() / art.width())));
	}

	private static Head of(DrawnArt art, int width, int height) {
		Head head = new Head();
		head.width = width;
		head.height = height;
		head.dpi(width * MM_PER_INCH / art.width(), height * MM_PER_INCH / art.height());
		return head;
	}

	private static int pixels(double mm, double dpi) {
		return (int) Math.max(1, Math.round(mm * dpi / MM_PER_INCH));
	}
}
