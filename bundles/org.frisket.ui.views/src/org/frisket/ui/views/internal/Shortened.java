package org.frisket.ui.views.internal;

import org.eclipse.swt.graphics.GC;

/** Words where there may be no room for all of them. */
public final class Shortened {

	private Shortened() {
	}

	/** As much of a text as is no wider than so many pixels, with an ellipsis for the rest. */
	public static String of(GC gc, String text, int width) {
		// no letter is narrower than a pixel: of an absurdly long name only as much is measured as could be seen
		int end = Math.min(text.length(), Math.max(0, width));
		if (end == text.length() && gc.textExtent(text).x <= width) {
			return text;
		}
		if (end > 0 && end < text.length() && Character.isLowSurrogate(text.charAt(end))) {
			end--;
		}
		while (end > 0 && gc.textExtent(text.substring(0, end) + "\u2026").x > width) { //$NON-NLS-1$
			end = text.offsetByCodePoints(end, -1);
		}
		return text.substring(0, end) + "\u2026"; //$NON-NLS-1$
	}
}
