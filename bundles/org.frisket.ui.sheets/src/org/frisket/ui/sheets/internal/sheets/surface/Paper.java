package org.frisket.ui.sheets.internal.sheets.surface;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.parts.StockColour;

/** Colours that go with the colour of a sheet. */
final class Paper {

	/** How much of the ink is in the tint of a part. */
	private static final double TINT = 0.16;
	/** Between dark and light grounds, as a share of white: half of what the eye sees. */
	private static final double MIDDLE = 0.45;

	private Paper() {
	}

	private static RGB ground(String text) {
		Color colour = StockColour.of(text);
		return (colour == null ? ThemeColour.BENCH_SHEET.colour() : colour).getRGB();
	}

	/** Black or white, whichever is seen better on the sheet. */
	static Color ink(String text) {
		RGB ground = ground(text);
		boolean light = (0.299 * ground.red + 0.587 * ground.green + 0.114 * ground.blue) / 255 > MIDDLE;
		return light ? new Color(0, 0, 0) : new Color(255, 255, 255);
	}

	/** The sheet's colour with a little ink in it, so that parts stand out from it. */
	static Color tint(String text) {
		RGB ground = ground(text);
		int ink = ink(text).getRed();
		return new Color(mixed(ground.red, ink), mixed(ground.green, ink), mixed(ground.blue, ink));
	}

	private static int mixed(int ground, int ink) {
		return (int) Math.round(ground + TINT * (ink - ground));
	}
}
