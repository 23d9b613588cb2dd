package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers in attributes. */
final class Numbers {

	static final String NUMBER = "[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?";

	private static final Pattern ONE = Pattern.compile(NUMBER);
	/** Larger coordinates are no drawing. */
	private static final double LARGEST = 1e9;

	private Numbers() {
	}

	/** NaN if it is none, or beyond all measure. */
	static double parse(String text) {
		if (!ONE.matcher(text).matches()) {
			return Double.NaN;
		}
		double value = Double.parseDouble(text);
		return Math.abs(value) <= LARGEST ? value : Double.NaN;
	}

	/** All up to the first thing that is neither a number nor a separator. */
	static List<Double> list(String text) {
		List<Double> numbers = new ArrayList<>();
		Matcher matcher = ONE.matcher(text);
		int at = 0;
		while (matcher.find(at) && isSeparator(text.substring(at, matcher.start()))) {
			double number = parse(matcher.group());
			if (Double.isNaN(number)) {
				break;
			}
			numbers.add(number);
			at = matcher.end();
		}
		return numbers;
	}

	private static boolean isSeparator(String between) {
		return between.isBlank() || between.strip().equals(",");
	}
}
