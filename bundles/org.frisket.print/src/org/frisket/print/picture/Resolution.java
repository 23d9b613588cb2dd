package org.frisket.print.picture;

/**
 * How fine a picture is, in dots to the inch across and down.
 *
 * @param source where that is from
 */
public record Resolution(double x, double y, Source source) {

	/** Of the dots to the inch. */
	public enum Source {
		/** The file says it. */
		FILE,
		/** The file says nothing, and {@link #USUAL} is taken. */
		ASSUMED,
		/** The user said it. */
		GIVEN,
		/** The file has no pixels: it is drawn with as many. */
		DRAWN
	}

	/** Of pictures that say nothing: a pixel of CSS 2.1 is 1/96 in, as everything that shows web pages takes it. */
	public static final double USUAL = 96;
	/** Below it, print looks coarse at reading distance: common practice, no source. */
	public static final double COARSE = 200;
	/** What lies beyond is a slip, not a resolution. */
	public static final double LEAST = 1;
	public static final double MOST = 20_000;

	private static final double MM_PER_INCH = 25.4;

	/** @throws IllegalArgumentException unless both are within {@link #LEAST} and {@link #MOST} */
	public Resolution {
		if (!isSound(x) || !isSound(y)) {
			throw new IllegalArgumentException(x + " by " + y + " dots to the inch");
		}
	}

	public static Resolution given(double dpi) {
		return new Resolution(dpi, dpi, Source.GIVEN);
	}

	static Resolution assumed() {
		return new Resolution(USUAL, USUAL, Source.ASSUMED);
	}

	public static boolean isSound(double dpi) {
		return dpi >= LEAST && dpi <= MOST;
	}

	/** Width of a pixel in mm. */
	public double pixelWidth() {
		return MM_PER_INCH / x;
	}

	/** Height of a pixel in mm. */
	public double pixelHeight() {
		return MM_PER_INCH / y;
	}

	/** The resolution that so many pixels have when they are printed this wide or high, in mm. */
	public static double effective(int pixels, double mm) {
		return pixels * MM_PER_INCH / mm;
	}

	/** Turned by a quarter. */
	Resolution turned() {
		return new Resolution(y, x, source);
	}
}
