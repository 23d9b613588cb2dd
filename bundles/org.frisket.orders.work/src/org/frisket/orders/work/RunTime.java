package org.frisket.orders.work;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/** How long a run takes, as people type and read it: {@code 12min}, {@code 1h 20min}, {@code 45s}; a bare number is minutes. */
public final class RunTime {

	private static final Pattern PART = Pattern.compile("(\\d{1,6}(?:[.,]\\d{1,3})?)\\s*(h|min|s)?\\s*");
	private static final BigDecimal MINUTE = BigDecimal.valueOf(60);
	private static final BigDecimal HOUR = BigDecimal.valueOf(3600);

	private RunTime() {
	}

	/** In seconds. @throws IllegalArgumentException with a sentence for people, if it is no time */
	public static BigDecimal parse(String text) {
		String typed = text.strip().toLowerCase(Locale.ROOT);
		Matcher part = PART.matcher(typed);
		BigDecimal seconds = BigDecimal.ZERO;
		int at = 0;
		while (part.find() && part.start() == at) {
			BigDecimal number = new BigDecimal(part.group(1).replace(',', '.'));
			String unit = part.group(2);
			if (unit == null && (at > 0 || part.end() < typed.length())) {
				break;
			}
			seconds = seconds.add(number.multiply("h".equals(unit) ? HOUR : "s".equals(unit) ? BigDecimal.ONE : MINUTE));
			at = part.end();
		}
		if (typed.isEmpty() || at != typed.length()) {
			throw new IllegalArgumentException(NLS.bind(Messages.RunTime_none, text.strip()));
		}
		return seconds;
	}

	/** To the second below two minutes, else to the minute. */
	public static String text(BigDecimal seconds) {
		long whole = seconds.setScale(0, RoundingMode.HALF_UP).longValueExact();
		if (whole < 2 * MINUTE.longValue()) {
			return whole + "\u00a0s";
		}
		long minutes = seconds.divide(MINUTE, 0, RoundingMode.HALF_UP).longValueExact();
		return minutes < 60 ? minutes + "\u00a0min" : minutes / 60 + "\u00a0h " + minutes % 60 + "\u00a0min";
	}
}
