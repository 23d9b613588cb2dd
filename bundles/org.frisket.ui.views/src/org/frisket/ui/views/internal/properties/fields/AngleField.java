package org.frisket.ui.views.internal.properties.fields;

import java.util.Locale;

import org.eclipse.osgi.util.NLS;

/** What may be typed into a field for an angle: degrees with or without their sign, and sums as for lengths. */
public final class AngleField {

	private static final double WHOLE = 360;

	private AngleField() {
	}

	/**
	 * Degrees above -180 and up to 180.
	 *
	 * @param current what the field holds
	 * @throws IllegalArgumentException with the reason in the user's language
	 */
	public static double parse(String text, double current) {
		return within(new SumReader(text, AngleField::degrees, Messages.AngleField_form).read(current));
	}

	private static double degrees(String number, String unit) {
		if (!unit.isEmpty() && !unit.equals("\u00b0") && !unit.toLowerCase(Locale.ROOT).equals("deg")) { //$NON-NLS-1$ //$NON-NLS-2$
			throw new IllegalArgumentException(NLS.bind(Messages.AngleField_unit, unit));
		}
		return Double.parseDouble(number);
	}

	private static double within(double degrees) {
		double turned = degrees % WHOLE;
		return turned > WHOLE / 2 ? turned - WHOLE : turned <= -WHOLE / 2 ? turned + WHOLE : turned;
	}

	/** An angle in degrees as a field shows it, to a hundredth. */
	public static String text(double degrees) {
		return NLS.bind(Messages.AngleField_text, LengthField.number(Math.rint(degrees * 100) / 100));
	}
}
