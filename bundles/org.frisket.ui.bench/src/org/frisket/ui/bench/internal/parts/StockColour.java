package org.frisket.ui.bench.internal.parts;

import org.eclipse.swt.graphics.Color;

/** The colours that layers name. */
public final class StockColour {

	private static final int DIGITS = 7;

	private StockColour() {
	}

	/** The colour of {@code #rrggbb}; null for null or any other text. */
	public static Color of(String text) {
		if (text == null || text.length() != DIGITS || text.charAt(0) != '#') {
			return null;
		}
		try {
			int rgb = Integer.parseUnsignedInt(text, 1, DIGITS, 16);
			return new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
		} catch (NumberFormatException e) {
			return null;
		}
	}
}
