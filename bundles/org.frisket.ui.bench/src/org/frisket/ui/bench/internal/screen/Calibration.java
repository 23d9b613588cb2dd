package org.frisket.ui.bench.internal.screen;

/** How finely a screen shows things, as it was measured. */
public record Calibration(double pixelsPerMm) {

	/** Width of a bank card of ISO/IEC 7810 ID-1, in mm. */
	public static final double CARD_WIDTH = 85.60;

	/** Height of the same, in mm. */
	public static final double CARD_HEIGHT = 53.98;

	/** From a wall of lamps to the finest glass; beyond that somebody has misread. */
	private static final double LEAST = 0.4;
	private static final double MOST = 80;
	private static final double MM_PER_INCH = 25.4;

	/** @throws IllegalArgumentException if no screen is like that */
	public Calibration {
		if (!isPlausible(pixelsPerMm)) {
			throw new IllegalArgumentException(
					"no screen shows %s pixels in a millimetre".formatted(pixelsPerMm)); //$NON-NLS-1$
		}
	}

	/** Whether a screen can be like that. */
	public static boolean isPlausible(double pixelsPerMm) {
		return pixelsPerMm >= LEAST && pixelsPerMm <= MOST;
	}

	/** What the window system says of a screen, by its dots per inch. */
	public static Calibration ofResolution(double dpi) {
		double pixelsPerMm = dpi / MM_PER_INCH;
		return new Calibration(Math.max(LEAST, Math.min(MOST, pixelsPerMm)));
	}

	public double dotsPerInch() {
		return pixelsPerMm * MM_PER_INCH;
	}
}
