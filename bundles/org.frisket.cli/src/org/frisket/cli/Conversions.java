package org.frisket.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.geometry.Length;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Texts of the command line as values. */
final class Conversions {

	private Conversions() {
	}

	static double positiveLength(String text) {
		try {
			return Length.parsePositive(text);
		} catch (IllegalArgumentException e) {
			throw new TypeConversionException(e.getMessage());
		}
	}

	/** A length above zero, in mm. */
	static final class PositiveLength implements ITypeConverter<Double> {
		@Override
		public Double convert(String text) {
			return positiveLength(text);
		}
	}

	/** Any length but zero, in mm. */
	static final class Distance implements ITypeConverter<Double> {
		@Override
		public Double convert(String text) {
			try {
				double mm = Length.parse(text);
				if (mm == 0) {
					throw new TypeConversionException("“" + text + "” is no distance");
				}
				return mm;
			} catch (IllegalArgumentException e) {
				throw new TypeConversionException(e.getMessage());
			}
		}
	}

	/** Any length, in mm. */
	static final class AnyLength implements ITypeConverter<Double> {
		@Override
		public Double convert(String text) {
			try {
				return Length.parse(text);
			} catch (IllegalArgumentException e) {
				throw new TypeConversionException(e.getMessage());
			}
		}
	}

	/** Sides in mm. */
	record Box(double width, double height) {
	}

	/** The sides of a box, such as {@code 100x40mm}; what has no unit of its own takes that of the other side. */
	static final class BoxConversion implements ITypeConverter<Box> {

		private static final Pattern FORM = Pattern
				.compile("\\s*([\\d.]+)\\s*([a-zA-Z]*?)\\s*[x×]\\s*([\\d.]+)\\s*([a-zA-Z]*)\\s*");

		@Override
		public Box convert(String text) {
			Matcher form = FORM.matcher(text);
			if (!form.matches()) {
				throw new TypeConversionException("“" + text + "” is not a box; write it like 100x40mm");
			}
			String unit = form.group(2).isEmpty() ? form.group(4) : form.group(2);
			return new Box(positiveLength(form.group(1) + unit), positiveLength(form.group(3) + form.group(4)));
		}
	}

	/** A text in which {@code \n} ends a line and {@code \\} is a backslash. */
	static String lines(String text) {
		StringBuilder plain = new StringBuilder(text.length());
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			char next = c == '\\' && i + 1 < text.length() ? text.charAt(i + 1) : 0;
			if (next == 'n' || next == '\\') {
				plain.append(next == 'n' ? '\n' : '\\');
				i++;
			} else {
				plain.append(c);
			}
		}
		return plain.toString();
	}
}
