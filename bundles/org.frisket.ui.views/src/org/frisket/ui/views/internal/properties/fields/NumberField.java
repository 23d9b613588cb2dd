package org.frisket.ui.views.internal.properties.fields;

import org.eclipse.osgi.util.NLS;

/** What may be typed into a field for a plain number: digits with a point or a comma. */
public final class NumberField {

	private NumberField() {
	}

	/** @throws IllegalArgumentException with the reason in the user's language */
	public static double parse(String text, double least, double most) {
		String number = text.strip().replace(',', '.');
		if (!number.matches("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)")) { //$NON-NLS-1$
			throw new IllegalArgumentException(NLS.bind(Messages.NumberField_form, text.strip()));
		}
		double value = Double.parseDouble(number);
		if (!(value >= least && value <= most)) {
			throw new IllegalArgumentException(
					NLS.bind(Messages.NumberField_range, LengthField.number(least), LengthField.number(most)));
		}
		return value;
	}

	/** A whole number. */
	public static int parseWhole(String text, int least, int most) {
		double value = parse(text, least, most);
		if (value != Math.rint(value)) {
			throw new IllegalArgumentException(NLS.bind(Messages.NumberField_whole, text.strip()));
		}
		return (int) value;
	}
}
