package org.frisket.geometry;

/** The tokens of SVG path data. */
final class PathDataScanner {

	private static final String COMMANDS = "MmZzLlHhVvCcSsQqTtAa";
	private static final char END = '\0';
	/** Far beyond any sheet, and small enough for cubes of it to stay finite. */
	private static final double LARGEST = 1e100;

	private final String text;
	private int position;

	PathDataScanner(String text) {
		this.text = text;
	}

	int position() {
		return position;
	}

	boolean atEnd() {
		return position >= text.length();
	}

	private char peek() {
		return atEnd() ? END : text.charAt(position);
	}

	void skipSpace() {
		while (isSpace(peek())) {
			position++;
		}
	}

	private static boolean isSpace(char c) {
		return c == ' ' || c == '\n' || c == '\t' || c == '\r' || c == '\f';
	}

	char command() {
		char found = peek();
		if (COMMANDS.indexOf(found) < 0) {
			throw new PathDataException(position, "expected a command, found " + describe());
		}
		position++;
		return found;
	}

	/** Space with at most one comma in it. */
	void separator() {
		skipSpace();
		if (peek() == ',') {
			position++;
			skipSpace();
		}
	}

	/** Moves on to the next group of arguments, if there is one. */
	boolean moreArguments() {
		skipSpace();
		if (peek() == ',') {
			position++;
			skipSpace();
			if (!startsNumber(peek())) {
				throw new PathDataException(position, "expected a number after the comma, found " + describe());
			}
			return true;
		}
		return startsNumber(peek());
	}

	private static boolean startsNumber(char c) {
		return isDigit(c) || c == '+' || c == '-' || c == '.';
	}

	double number() {
		int start = position;
		if (peek() == '+' || peek() == '-') {
			position++;
		}
		int digits = digits();
		if (peek() == '.') {
			position++;
			digits += digits();
		}
		if (digits == 0) {
			throw new PathDataException(position, "expected a number, found " + describe());
		}
		exponent();
		double value = Decimals.parse(text, start, position);
		if (Math.abs(value) > LARGEST) {
			throw new PathDataException(start, "number is too large: " + text.substring(start, position));
		}
		return value;
	}

	private void exponent() {
		if (peek() != 'e' && peek() != 'E') {
			return;
		}
		position++;
		if (peek() == '+' || peek() == '-') {
			position++;
		}
		if (digits() == 0) {
			throw new PathDataException(position, "expected the digits of an exponent, found " + describe());
		}
	}

	private int digits() {
		int start = position;
		while (isDigit(peek())) {
			position++;
		}
		return position - start;
	}

	private static boolean isDigit(char c) {
		return c >= '0' && c <= '9';
	}

	/** A flag of an arc is one character and may be followed by a number without a gap. */
	boolean flag() {
		char found = peek();
		if (found != '0' && found != '1') {
			throw new PathDataException(position, "an arc flag must be 0 or 1, found " + describe());
		}
		position++;
		return found == '1';
	}

	private String describe() {
		return atEnd() ? "the end" : "'" + peek() + "'";
	}
}
