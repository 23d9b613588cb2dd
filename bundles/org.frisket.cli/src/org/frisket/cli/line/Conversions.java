package org.frisket.cli.line;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.geometry.Length;
import org.frisket.geometry.stencil.Choice;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Texts of the command line as values. */
public final class Conversions {

	private Conversions() {
	}

	public static double positiveLength(String text) {
		try {
			return Length.parsePositive(text);
		} catch (IllegalArgumentException e) {
			throw new TypeConversionException(e.getMessage());
		}
	}

	/** A length above zero, in mm. */
	public static final class PositiveLength implements ITypeConverter<Double> {
		@Override
		public Double convert(String text) {
			return positiveLength(text);
		}
	}

	/** Any length but zero, in mm. */
	public static final class Distance implements ITypeConverter<Double> {
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
	public static final class AnyLength implements ITypeConverter<Double> {
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
	public record Box(double width, double height) {
	}

	/** The sides of a box, such as {@code 100x40mm}; what has no unit of its own takes that of the other side. */
	public static final class BoxConversion implements ITypeConverter<Box> {

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

	/** A whole number. */
	public static int whole(String text) {
		try {
			return Integer.parseInt(text.strip());
		} catch (NumberFormatException e) {
			throw new TypeConversionException("“" + text + "” is not a whole number up to " + Integer.MAX_VALUE);
		}
	}

	/** A number with or without decimals; none that is beyond all bounds. */
	public static double number(String text) {
		if (text.strip().matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?")) {
			double value = Double.parseDouble(text.strip());
			if (Double.isFinite(value)) {
				return value;
			}
		}
		throw new TypeConversionException("“" + text + "” is not a number");
	}

	/** A day of the calendar. */
	public static LocalDate day(String text) {
		try {
			return LocalDate.parse(text.strip());
		} catch (DateTimeParseException e) {
			throw new TypeConversionException("“" + text + "” is not a day; write it like 2027-03-01");
		}
	}

	/** A file or a folder. */
	public static Path path(String text) {
		try {
			return Path.of(text);
		} catch (InvalidPathException e) {
			throw new TypeConversionException("“" + text.replaceAll("\\p{Cntrl}", "?") + "” cannot be the name of a file: "
					+ e.getReason());
		}
	}

	/** A bridge between two letters, counted from 1. @param width in mm */
	public record BridgeChoice(int one, int other, double width) {
	}

	/** Such as {@code 1-2=1.5mm}. */
	public static final class BridgeConversion implements ITypeConverter<BridgeChoice> {

		private static final Pattern FORM = Pattern.compile("\\s*(\\d{1,5})\\s*-\\s*(\\d{1,5})\\s*(?:=(.*))?");
		private static final double USUAL_WIDTH = 1;

		@Override
		public BridgeChoice convert(String text) {
			Matcher form = FORM.matcher(text);
			if (!form.matches() || Integer.parseInt(form.group(1)) == 0 || Integer.parseInt(form.group(2)) == 0) {
				throw new TypeConversionException("“" + text + "” is no bridge; write it like 1-2=1.5mm");
			}
			return new BridgeChoice(Integer.parseInt(form.group(1)), Integer.parseInt(form.group(2)),
					form.group(3) == null ? USUAL_WIDTH : positiveLength(form.group(3)));
		}
	}

	/** How the insides of a letter, counted from 1, are held. @param angles in degrees */
	public record IslandChoice(int letter, int count, List<Double> angles) {
	}

	/** Such as {@code 3=1}, or {@code 3=@45@225}. */
	public static final class IslandConversion implements ITypeConverter<IslandChoice> {

		private static final Pattern FORM = Pattern
				.compile("\\s*(\\d{1,5})\\s*=\\s*(?:(\\d{1,2})|((?:@-?\\d{1,3}(?:\\.\\d{1,6})?){1,12}))\\s*");

		@Override
		public IslandChoice convert(String text) {
			Matcher form = FORM.matcher(text);
			if (!form.matches() || Integer.parseInt(form.group(1)) == 0
					|| form.group(2) != null && Integer.parseInt(form.group(2)) > Choice.MOST) {
				throw new TypeConversionException("“" + text + "” does not say how a letter is held; write it like 3=1, with "
						+ Choice.MOST + " bridges at most, or 3=@45@225");
			}
			List<Double> angles = form.group(3) == null ? List.of()
					: Arrays.stream(form.group(3).substring(1).split("@")).map(Double::valueOf).toList();
			return new IslandChoice(Integer.parseInt(form.group(1)),
					form.group(2) == null ? angles.size() : Integer.parseInt(form.group(2)), angles);
		}
	}

	/** A text in which {@code \n} ends a line and {@code \\} is a backslash. */
	public static String lines(String text) {
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
