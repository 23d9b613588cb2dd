package org.frisket.material.desk;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/** Numbers as people type them: with a point or a comma, and with the unit that is asked for or without. */
public final class TypedNumber {

	private static final Pattern NUMBER = Pattern.compile("([+-]?\\d{1,6}(?:[.,]\\d{1,6})?)\\s*(\\S*)");

	private TypedNumber() {
	}

	/**
	 * The number in the unit that is asked for.
	 *
	 * @param unit that may stand behind it; empty for none
	 * @throws IllegalArgumentException with the reason in the user's language
	 */
	public static double parse(String text, String unit) {
		Matcher matcher = NUMBER.matcher(text.strip());
		if (!matcher.matches() || !matcher.group(2).isEmpty() && !matcher.group(2).equals(unit)) {
			throw new IllegalArgumentException(text.isBlank() ? Messages.TypedNumber_empty
					: unit.isEmpty() ? NLS.bind(Messages.TypedNumber_form, text.strip())
							: NLS.bind(Messages.TypedNumber_formUnit, text.strip(), unit));
		}
		return Double.parseDouble(matcher.group(1).replace(',', '.'));
	}
}
