package org.frisket.typography;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Monitor;

/**
 * Sets a text in a face.
 * <p>
 * Lines end at line feed, carriage return or both together, and at the Unicode line and paragraph separators. Tabs
 * and other control characters count as blanks. A character that the font lacks is left out without a gap and
 * reported; so is an unpaired surrogate. Where only an accent is missing, its letter is set without it. A blank needs
 * no glyph: if the font has none, it is a quarter of an em wide. Blanks at the end of a line have no effect.
 */
public final class TextSetter {

	/** The most characters (UTF-16) that are set at a time. */
	public static final int LONGEST_TEXT = 20_000;

	private TextSetter() {
	}

	/** @throws IllegalArgumentException if the text is longer than {@value #LONGEST_TEXT} characters */
	public static SetText set(String text, FontFace face, Setting setting, Monitor monitor) {
		if (text.length() > LONGEST_TEXT) {
			throw new IllegalArgumentException("text has " + text.length() + " characters; at most " + LONGEST_TEXT
					+ " can be set at a time");
		}
		List<LineSetter> lines = new ArrayList<>();
		double widest = 0;
		for (int start = 0; start <= text.length();) {
			monitor.check();
			int end = lineEnd(text, start);
			LineSetter line = new LineSetter(text, start, end, face, setting, lines.size());
			lines.add(line);
			widest = Math.max(widest, line.width());
			start = afterBreak(text, end);
			monitor.worked((double) Math.min(start, text.length()) / Math.max(1, text.length()));
		}
		return place(text, face, setting, lines, widest);
	}

	private static SetText place(String text, FontFace face, Setting setting, List<LineSetter> lines, double widest) {
		List<Letter> letters = new ArrayList<>();
		List<MissingGlyph> missing = new ArrayList<>();
		List<TextLine> placed = new ArrayList<>();
		for (LineSetter line : lines) {
			double left = left(setting.alignment(), widest, line.width());
			double baseline = placed.size() * setting.lineDistance();
			for (Letter letter : line.letters()) {
				letters.add(letter.movedBy(left, baseline));
			}
			missing.addAll(line.missing());
			placed.add(new TextLine(line.start(), line.end(), left, line.width(), baseline));
		}
		missing.sort(Comparator.comparingInt(MissingGlyph::index));
		return new SetText(text, face, setting, letters, missing, placed);
	}

	static double left(Alignment alignment, double widest, double width) {
		return switch (alignment) {
		case LEFT -> 0;
		case CENTRE -> (widest - width) / 2;
		case RIGHT -> widest - width;
		};
	}

	private static boolean isBreak(char c) {
		return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
	}

	private static int lineEnd(String text, int start) {
		int end = start;
		while (end < text.length() && !isBreak(text.charAt(end))) {
			end++;
		}
		return end;
	}

	/** Start of the next line; beyond the text if there is none. */
	private static int afterBreak(String text, int end) {
		return text.startsWith("\r\n", end) ? end + 2 : end + 1;
	}
}
