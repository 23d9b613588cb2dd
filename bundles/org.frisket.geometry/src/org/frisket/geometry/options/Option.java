package org.frisket.geometry.options;

import java.util.List;
import java.util.regex.Pattern;

import org.frisket.geometry.Length;

/**
 * One option of a step, described so that a form, a command-line flag, a preset and a help page can be made of it.
 *
 * @param name        of the command-line flag and in presets: lower case, words joined by hyphens
 * @param description what it does, half a sentence, for people
 * @param kind        of its values
 * @param initial     the default, as text
 * @param least       the least value of a length (mm), count or number
 * @param most        the greatest value of a length (mm), count or number
 * @param choices     what a choice offers; empty for other kinds
 * @param unit        of a length or number; empty if it has none
 */
public record Option(String name, String description, Kind kind, String initial, double least, double most,
		List<String> choices, String unit) {

	/** What values an option takes. */
	public enum Kind {
		/** A length with its unit. */
		LENGTH,
		/** A whole number. */
		COUNT,
		/** A decimal number in the option's unit, which may stand behind it. */
		NUMBER,
		/** One of some words. */
		CHOICE,
		/** Free text. */
		TEXT
	}

	/** Characters of a number that somebody means. */
	private static final int LONGEST_QUOTE = 40;
	private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,15}\\.?\\d{0,15}|\\.\\d{1,15})");
	private static final Pattern NAME = Pattern.compile("[a-z]+(-[a-z]+)*");

	public Option {
		choices = List.copyOf(choices);
		if (!NAME.matcher(name).matches()) {
			throw new IllegalArgumentException("an option cannot be named “" + name + "”");
		}
	}

	public static Option length(String name, String description, String initial, double leastMm, double mostMm) {
		return new Option(name, description, Kind.LENGTH, initial, leastMm, mostMm, List.of(), "mm");
	}

	public static Option count(String name, String description, int initial, int least, int most) {
		return new Option(name, description, Kind.COUNT, Integer.toString(initial), least, most, List.of(), "");
	}

	/** @param unit of the number, such as {@code mm/s}; empty if it has none */
	public static Option number(String name, String description, String unit, double initial, double least,
			double most) {
		return new Option(name, description, Kind.NUMBER, plain(initial), least, most, List.of(), unit);
	}

	/** The first choice is the default. */
	public static Option choice(String name, String description, String... choices) {
		return new Option(name, description, Kind.CHOICE, choices[0], 0, 0, List.of(choices), "");
	}

	public static Option text(String name, String description, String initial) {
		return new Option(name, description, Kind.TEXT, initial, 0, 0, List.of(), "");
	}

	/**
	 * The value a text stands for: Double (mm or its unit), Integer or String.
	 *
	 * @throws IllegalArgumentException if the text is no value of this option; the message names it and the reason
	 */
	Object parse(String text) {
		return switch (kind) {
		case LENGTH -> length(text);
		case COUNT -> count(text);
		case NUMBER -> number(text);
		case CHOICE -> oneOf(text);
		case TEXT -> text;
		};
	}

	private double length(String text) {
		try {
			double mm = Length.parse(text);
			if (mm >= least && mm <= most) {
				return mm;
			}
		} catch (IllegalArgumentException e) {
			throw new IllegalArgumentException(wrong("Option_length", text), e);
		}
		throw new IllegalArgumentException(wrong("Option_lengthRange", text));
	}

	private int count(String text) {
		try {
			int count = Integer.parseInt(text.strip());
			if (count >= least && count <= most) {
				return count;
			}
		} catch (NumberFormatException e) {
			throw new IllegalArgumentException(wrong("Option_count", text), e);
		}
		throw new IllegalArgumentException(wrong("Option_countRange", text));
	}

	private double number(String text) {
		String bare = text.strip();
		if (!unit.isEmpty() && bare.endsWith(unit)) {
			bare = bare.substring(0, bare.length() - unit.length()).stripTrailing();
		}
		if (!NUMBER.matcher(bare).matches()) {
			throw new IllegalArgumentException(wrong("Option_number", text));
		}
		double number = Double.parseDouble(bare);
		if (!(number >= least && number <= most)) {
			throw new IllegalArgumentException(wrong("Option_numberRange", text));
		}
		return number;
	}

	private String wrong(String message, String text) {
		// a long one is not quoted whole: nobody could read what else is said
		String quoted = text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
		return Words.of(message, name, quoted, plain(least), plain(most),
				unit.isEmpty() ? "" : " " + unit);
	}

	private static String plain(double value) {
		return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
	}

	private String oneOf(String text) {
		if (!choices.contains(text)) {
			throw new IllegalArgumentException(
					Words.of("Option_choice", name, text, String.join(", ", choices)));
		}
		return text;
	}
}
