package org.frisket.imports.svg;

import java.util.Locale;

import org.frisket.geometry.Decimals;

/**
 * Lengths in pixels, as attributes and styles write them (SVG 1.1, section 4.2; CSS Values 4, section 6.2).
 *
 * @param perInch  pixels to an inch
 * @param width    of the viewport that percentages are of, in pixels
 * @param height   of it
 * @param fontSize that em is of, in pixels
 */
record Lengths(double perInch, double width, double height, double fontSize) {

	/** What a percentage is of. */
	enum Of {
		WIDTH, HEIGHT, DIAGONAL, FONT
	}

	Lengths withFontSize(double size) {
		return new Lengths(perInch, width, height, size);
	}

	/** NaN if it is none. */
	double parse(String text, Of of) {
		int from = Numbers.afterBlanks(text, 0);
		int end = Decimals.end(text, from);
		if (end == from) {
			return Double.NaN;
		}
		String unit = end == text.length() ? "" : text.substring(end).strip().toLowerCase(Locale.ROOT);
		return Numbers.parse(text, from, end) * pixels(unit, of);
	}

	private double pixels(String unit, Of of) {
		return switch (unit) {
		case "", "px" -> 1;
		case "in" -> perInch;
		case "mm" -> perInch / 25.4;
		case "cm" -> perInch / 2.54;
		case "q" -> perInch / 101.6;
		case "pt" -> perInch / 72;
		case "pc" -> perInch / 6;
		case "em", "rem" -> fontSize;
		// without the font at hand, as CSS allows
		case "ex", "ch" -> fontSize / 2;
		case "%" -> whole(of) / 100;
		default -> Double.NaN;
		};
	}

	private double whole(Of of) {
		return switch (of) {
		case WIDTH -> width;
		case HEIGHT -> height;
		case DIAGONAL -> Math.sqrt((width * width + height * height) / 2);
		case FONT -> fontSize;
		};
	}
}
