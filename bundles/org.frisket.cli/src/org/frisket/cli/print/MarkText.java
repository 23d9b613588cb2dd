package org.frisket.cli.print;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.geometry.Length;
import org.frisket.geometry.Point;
import org.frisket.print.register.MeasuredLengths.Between;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Marks as they are written on the command line. */
final class MarkText {

	/** What stands between the marks of a list. */
	private static final String BETWEEN = ";";
	private static final Pattern BARE = Pattern.compile("[+-]?[\\d.]+");
	private static final Pattern LENGTH = Pattern.compile("\\s*(\\d{1,3})\\s*-\\s*(\\d{1,3})\\s*=(.*)");

	private MarkText() {
	}

	/** A list of places. */
	record Places(List<Point> points) {
	}

	/** A list of lengths between marks. */
	record Lengths(List<Between> lengths) {
	}

	/** In mm; a bare number is one of mm. */
	private static double length(String text) {
		String stripped = text.strip();
		try {
			return Length.parse(BARE.matcher(stripped).matches() ? stripped + "mm" : stripped);
		} catch (IllegalArgumentException e) {
			throw new TypeConversionException(e.getMessage());
		}
	}

	/** Such as {@code 10,10;290,10;11.4in,190}. */
	static final class PlacesConversion implements ITypeConverter<Places> {
		@Override
		public Places convert(String text) {
			List<Point> points = new ArrayList<>();
			for (String each : text.strip().split(BETWEEN)) {
				String[] coordinates = each.split(",", -1);
				if (coordinates.length != 2) {
					throw new TypeConversionException("“" + each + "” is no place; write places like 10,10;290,10");
				}
				points.add(new Point(length(coordinates[0]), length(coordinates[1])));
			}
			return new Places(points);
		}
	}

	/** Such as {@code 1-2=280.5;1-3=333.1}; marks are counted from 1. */
	static final class LengthsConversion implements ITypeConverter<Lengths> {
		@Override
		public Lengths convert(String text) {
			List<Between> lengths = new ArrayList<>();
			for (String each : text.strip().split(BETWEEN)) {
				Matcher form = LENGTH.matcher(each);
				if (!form.matches()) {
					throw new TypeConversionException("“" + each + "” is no length between marks; write them like 1-2=280.5;1-3=333.1");
				}
				lengths.add(new Between(Integer.parseInt(form.group(1)) - 1, Integer.parseInt(form.group(2)) - 1,
						length(form.group(3))));
			}
			return new Lengths(lengths);
		}
	}
}
