package org.frisket.ui;

import java.text.NumberFormat;

import org.eclipse.osgi.util.NLS;

/** Lengths as the screen writes them: in the unit the studio has chosen and the number format of the user's language. */
public final class LengthText {

	private LengthText() {
	}

	/** One length in mm with its unit, such as {@code 12.40 mm} or {@code 0.488 in}; never a negative zero. */
	public static String of(double mm) {
		LengthUnit unit = LengthUnit.shown();
		return NLS.bind(Messages.LengthText_one, number(mm, unit), unit.symbol());
	}

	/** Width and height in mm, such as {@code 80.00 × 12.50 mm}. */
	public static String size(double width, double height) {
		LengthUnit unit = LengthUnit.shown();
		return NLS.bind(Messages.LengthText_size,
				new Object[] { number(width, unit), number(height, unit), unit.symbol() });
	}

	/** A place or a shift in mm, such as {@code 12.40, -3.00 mm}. */
	public static String place(double x, double y) {
		LengthUnit unit = LengthUnit.shown();
		return NLS.bind(Messages.LengthText_place, new Object[] { number(x, unit), number(y, unit), unit.symbol() });
	}

	private static String number(double mm, LengthUnit unit) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMinimumFractionDigits(unit.decimals());
		format.setMaximumFractionDigits(unit.decimals());
		double value = unit.fromMillimetres(mm);
		// a value that rounds to nothing has no sign
		return format.format(Math.abs(value) < 0.5 * Math.pow(10, -unit.decimals()) ? 0 : value);
	}
}
