package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Decimals;

/** Numbers in attributes. */
final class Numbers {

	/** Larger coordinates are no drawing. */
	private static final double LARGEST = 1e9;

	private Numbers() {
	}

	/** NaN if it is none, or beyond all measure. */
	static double parse(String text) {
		return !text.isEmpty() && Decimals.end(text, 0) == text.length() ? parse(text, 0, text.length()) : Double.NaN;
	}

	/** That between two places, where one stands; NaN if it is beyond all measure. */
	static double parse(String text, int from, int to) {
		double value = Decimals.parse(text, from, to);
		return Math.abs(value) <= LARGEST ? value : Double.NaN;
	}

	/** All up to the first thing that is neither a number nor a separator. */
	static List<Double> list(String text) {
		List<Double> numbers = new ArrayList<>();
		int at = 0;
		while (true) {
			int from = afterSeparator(text, at);
			int end = Decimals.end(text, from);
			double number = end == from ? Double.NaN : parse(text, from, end);
			if (Double.isNaN(number)) {
				return numbers;
			}
			numbers.add(number);
			at = end;
		}
	}

	/** Behind blanks with at most one comma among them. */
	static int afterSeparator(String text, int from) {
		int at = afterBlanks(text, from);
		return at < text.length() && text.charAt(at) == ',' ? afterBlanks(text, at + 1) : at;
	}

	static int afterBlanks(String text, int from) {
		int at = from;
		while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
			at++;
		}
		return at;
	}
}
