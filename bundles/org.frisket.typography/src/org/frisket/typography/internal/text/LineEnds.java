package org.frisket.typography.internal.text;

import java.util.ArrayList;
import java.util.List;

/** Where the lines of a text end by themselves. */
public final class LineEnds {

	/**
	 * A line without its end.
	 *
	 * @param start index of its first character
	 * @param end   index after its last one
	 */
	public record Range(int start, int end) {
	}

	private LineEnds() {
	}

	/** At least one; a text that ends with a line end has an empty line after it. */
	public static List<Range> lines(String text) {
		List<Range> lines = new ArrayList<>();
		for (int start = 0; start <= text.length();) {
			int end = start;
			while (end < text.length() && !isBreak(text.charAt(end))) {
				end++;
			}
			lines.add(new Range(start, end));
			start = text.startsWith("\r\n", end) ? end + 2 : end + 1;
		}
		return lines;
	}

	private static boolean isBreak(char c) {
		return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
	}
}
