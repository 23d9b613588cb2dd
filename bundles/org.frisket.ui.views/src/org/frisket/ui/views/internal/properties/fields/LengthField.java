package org.frisket.ui.views.internal.properties.fields;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Length;
import org.frisket.ui.LengthUnit;

/**
 * What may be typed into a field for a length, over and above a {@link Length}: a number alone is in the unit of the
 * studio, a comma serves as a point, lengths are added and taken away ({@code 40mm + 1.5in}), multiplied and divided by
 * numbers ({@code 120mm/3}), and what begins with {@code +}, {@code *} or {@code /} is done to the value in the field
 * ({@code +2mm}, {@code /2}). A minus at the beginning is the sign of the value.
 *
 * @param least the smallest length allowed, in mm
 * @param most  the largest length allowed, in mm
 */
public record LengthField(double least, double most) {

	/** Sheets and what lies on them are within this. */
	private static final double FAR = 10_000;
	private static final double SMALLEST = 0.01;

	/** Any place or distance on a bench. */
	public static final LengthField ANY = new LengthField(-FAR, FAR);
	/** Sizes, which are above nothing. */
	public static final LengthField SIZE = new LengthField(SMALLEST, FAR);
	/** Amounts, which may be nothing. */
	public static final LengthField AMOUNT = new LengthField(0, FAR);

	/**
	 * The length in mm.
	 *
	 * @param current what the field holds, in mm
	 * @throws IllegalArgumentException with the reason in the user's language
	 */
	public double parse(String text, double current) {
		double mm = new SumReader(text, LengthField::length, Messages.LengthField_form).read(current);
		if (!(mm >= least)) {
			throw new IllegalArgumentException(NLS.bind(Messages.LengthField_tooSmall, text(least)));
		}
		if (!(mm <= most)) {
			throw new IllegalArgumentException(NLS.bind(Messages.LengthField_tooLarge, text(most)));
		}
		return mm;
	}

	/** A length in mm as a field shows it: in the unit of the studio, as short as its value allows. */
	public static String text(double mm) {
		LengthUnit unit = LengthUnit.shown();
		double value = rounded(unit.fromMillimetres(mm), unit.decimals() + 1);
		return NLS.bind(Messages.LengthField_text, number(value), unit.symbol());
	}

	private static double length(String number, String unit) {
		if (unit.isEmpty()) {
			return LengthUnit.shown().toMillimetres(Double.parseDouble(number));
		}
		String name = unit.replace('\u2033', '"').toLowerCase(Locale.ROOT);
		if (!name.matches("mm|cm|in|pt|\"")) { //$NON-NLS-1$
			throw new IllegalArgumentException(NLS.bind(Messages.LengthField_unit, unit));
		}
		try {
			return Length.parse(number + name);
		} catch (IllegalArgumentException e) {
			// the form is right, so that it can only be longer than any sheet
			throw new IllegalArgumentException(NLS.bind(Messages.LengthField_tooLarge, text(FAR)), e);
		}
	}

	private static double rounded(double value, int decimals) {
		double scale = Math.pow(10, decimals);
		return Math.rint(value * scale) / scale;
	}

	/** A plain number as a field shows it, to a ten-thousandth. */
	public static String number(double value) {
		DecimalFormat format = new DecimalFormat("0.####", DecimalFormatSymbols.getInstance()); //$NON-NLS-1$
		// a value that rounds to nothing has no sign
		return format.format(Math.abs(value) < 0.00005 ? 0 : value);
	}
}
