package org.frisket.page.flow;

import java.text.NumberFormat;

import org.eclipse.osgi.util.NLS;

/**
 * Numbers as people read them, in the user's language.
 *
 * @param inches whether lengths are in inches
 */
public record Figures(boolean inches) {

	public static final double MM_PER_INCH = 25.4;
	private static final int MINUTE = 60;

	/** With at most so many decimals. */
	public static String number(double value, int decimals) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMaximumFractionDigits(decimals);
		return format.format(value);
	}

	/** With its unit. */
	public String length(double mm) {
		return inches ? NLS.bind(Messages.Figures_inch, number(mm / MM_PER_INCH, 3))
				: NLS.bind(Messages.Figures_millimetre, number(mm, 2));
	}

	/** Width by height, with their unit. */
	public String size(double width, double height) {
		return inches
				? NLS.bind(Messages.Figures_inches, number(width / MM_PER_INCH, 3), number(height / MM_PER_INCH, 3))
				: NLS.bind(Messages.Figures_millimetres, number(width, 1), number(height, 1));
	}

	/** With their unit. */
	public static String metres(double metres) {
		return NLS.bind(Messages.Figures_metre, number(metres, 2));
	}

	/** In minutes and seconds, rounded up: nobody is to be surprised. */
	public static String time(double seconds) {
		long all = (long) Math.ceil(seconds - 1e-6);
		return NLS.bind(Messages.Figures_minutes, all / MINUTE, String.format("%02d", all % MINUTE));
	}

	/** A setting in the machine's steps, with what it calls them. */
	public static String setting(double value, String unit) {
		return unit.isBlank() ? number(value, 3) : number(value, 3) + " " + unit;
	}
}
