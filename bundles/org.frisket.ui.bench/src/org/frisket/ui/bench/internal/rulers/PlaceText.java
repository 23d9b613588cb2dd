package org.frisket.ui.bench.internal.rulers;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Length;
import org.frisket.ui.LengthUnit;

/** A place as it is typed: a length with its unit, or a number of the unit that is shown. */
final class PlaceText {

	private PlaceText() {
	}

	/**
	 * The place in mm.
	 *
	 * @throws IllegalArgumentException if it is none
	 */
	static double parse(String text) {
		String plain = text.strip().replace(',', '.');
		boolean isNumber = !plain.isEmpty() && Character.isDigit(plain.charAt(plain.length() - 1));
		return Length.parse(isNumber ? plain + (LengthUnit.shown() == LengthUnit.INCH ? "in" : "mm") : plain); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** What is wrong with it, in the user's language; null if nothing is. */
	static String trouble(String text) {
		try {
			parse(text);
			return null;
		} catch (IllegalArgumentException e) {
			return text.isBlank() ? "" : NLS.bind(Messages.PlaceText_wrong, text); //$NON-NLS-1$
		}
	}
}
