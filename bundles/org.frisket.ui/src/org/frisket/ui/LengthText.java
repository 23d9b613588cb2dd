package org.frisket.ui;

import java.text.NumberFormat;

import org.eclipse.osgi.util.NLS;

/** Lengths as the screen writes them, in the number format of the user's language. */
public final class LengthText {

	private LengthText() {
	}

	/** One length in mm with its unit, such as {@code 12.40 mm}; never a negative zero. */
	public static String of(double mm) {
		return NLS.bind(Messages.LengthText_one, number(mm));
	}

	/** Width and height in mm, such as {@code 80.00 × 12.50 mm}. */
	public static String size(double width, double height) {
		return NLS.bind(Messages.LengthText_size, number(width), number(height));
	}

	/** A place or a shift in mm, such as {@code 12.40, -3.00 mm}. */
	public static String place(double x, double y) {
		return NLS.bind(Messages.LengthText_place, number(x), number(y));
	}

	private static String number(double mm) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMinimumFractionDigits(2);
		format.setMaximumFractionDigits(2);
		// a value that rounds to nothing has no sign
		return format.format(Math.abs(mm) < 0.005 ? 0 : mm);
	}
}
