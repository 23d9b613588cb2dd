package org.frisket.ui.views.internal.properties.fields;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/**
 * Reads a sum of quantities from left to right: they are added and taken away, multiplied and divided by numbers, and
 * what begins with {@code +}, {@code *} or {@code /} is done to the value there is. A minus at the beginning is a sign.
 */
final class SumReader {

	/** What a number with its unit comes to. */
	interface Quantity {

		/**
		 * @param unit empty if there is none
		 * @throws IllegalArgumentException with the reason in the user's language
		 */
		double value(String number, String unit);
	}

	private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d*)?|[.,]\\d+"); //$NON-NLS-1$
	private static final Pattern UNIT = Pattern.compile("[\\p{L}\"\u2033\u00b0]+"); //$NON-NLS-1$

	private final String text;
	private final Quantity quantity;
	private final String wrong;
	private int at;

	/** @param wrong what is said of a text that is none of this, with a place for the text */
	SumReader(String text, Quantity quantity, String wrong) {
		this.text = text;
		this.quantity = quantity;
		this.wrong = wrong;
	}

	double read(double current) {
		double value;
		skip();
		if (taken('+')) {
			value = current + product(sign());
		} else if (peek('*') || peek('\u00d7') || peek('/')) {
			value = scaled(current);
		} else {
			value = product(sign());
		}
		value = sum(value);
		if (at < text.length()) {
			throw wrong();
		}
		return value;
	}

	private double sum(double first) {
		double value = first;
		while (true) {
			if (taken('+')) {
				value += product(sign());
			} else if (minus()) {
				value -= product(sign());
			} else {
				return value;
			}
		}
	}

	private double sign() {
		return minus() ? -1 : 1;
	}

	private double product(double sign) {
		return scaled(sign * quantity());
	}

	private double scaled(double first) {
		double value = first;
		while (true) {
			if (taken('*') || taken('\u00d7')) {
				value *= number();
			} else if (taken('/')) {
				double divisor = number();
				if (divisor == 0) {
					throw new IllegalArgumentException(Messages.LengthField_divisor);
				}
				value /= divisor;
			} else {
				return value;
			}
		}
	}

	private double quantity() {
		String number = digits();
		Matcher unit = UNIT.matcher(text).region(at, text.length());
		String name = unit.lookingAt() ? unit.group() : ""; //$NON-NLS-1$
		at += name.length();
		skip();
		return quantity.value(number, name);
	}

	private double number() {
		return Double.parseDouble(digits());
	}

	private String digits() {
		Matcher number = NUMBER.matcher(text).region(at, text.length());
		if (!number.lookingAt()) {
			throw wrong();
		}
		at = number.end();
		skip();
		return number.group().replace(',', '.');
	}

	private boolean minus() {
		return taken('-') || taken('\u2212');
	}

	private boolean taken(char sign) {
		if (!peek(sign)) {
			return false;
		}
		at++;
		skip();
		return true;
	}

	private boolean peek(char sign) {
		return at < text.length() && text.charAt(at) == sign;
	}

	private void skip() {
		while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
			at++;
		}
	}

	private IllegalArgumentException wrong() {
		return new IllegalArgumentException(NLS.bind(wrong, text.strip()));
	}
}
