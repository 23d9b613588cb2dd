package org.frisket.ui.sheets.internal.sheets.surface;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.swt.graphics.Font;

/** Text that is cut short where there is no room for it. */
final class Fitted {

	private Fitted() {
	}

	/** @param room in pixels */
	static String text(String text, Font font, int room) {
		if (FigureUtilities.getTextExtents(text, font).width <= room) {
			return text;
		}
		int fits = 0;
		int beyond = text.length();
		while (beyond - fits > 1) {
			int middle = (fits + beyond) / 2;
			if (FigureUtilities.getTextExtents(text.substring(0, middle) + '\u2026', font).width <= room) {
				fits = middle;
			} else {
				beyond = middle;
			}
		}
		return text.substring(0, fits).stripTrailing() + '\u2026';
	}
}
