package org.frisket.typography;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.typography.internal.text.LineEnds;

/**
 * Sets a text in a face.
 * <p>
 * Lines end at line feed, carriage return or both together, and at the Unicode line and paragraph separators. Tabs
 * and other control characters count as blanks. A character that the font lacks is left out without a gap and
 * reported; so is an unpaired surrogate. Where only an accent is missing, its letter is set without it. A blank needs
 * no glyph: if the font has none, it is a quarter of an em wide. Blanks at the end of a line have no effect.
 * <p>
 * With a measure, lines also end between words. A line's distance from the one before it goes by the tallest cap
 * height in it. Lines of several directions stand as the Unicode Bidirectional Algorithm (UAX #9) has it; a
 * paragraph runs the way of its first letter that has one.
 */
public final class TextSetter {

	/** The most characters (UTF-16) that are set at a time. */
	public static final int LONGEST_TEXT = 20_000;

	private TextSetter() {
	}

	/** @throws IllegalArgumentException if the text is longer than {@value #LONGEST_TEXT} characters */
	public static SetText set(String text, FontFace face, Setting setting, Monitor monitor) {
		return set(text, face, setting, List.of(), monitor);
	}

	/**
	 * @param spans parts that are set otherwise; what lies beyond the text has no effect
	 * @throws IllegalArgumentException if the text is longer than {@value #LONGEST_TEXT} characters, or spans overlap
	 */
	public static SetText set(String text, FontFace face, Setting setting, List<TextSpan> spans, Monitor monitor) {
		List<TextSpan> ordered = TextSpan.ordered(spans);
		List<LineSetter> lines = new ArrayList<>();
		for (Paragraph paragraph : paragraphs(text, face, setting, ordered, false)) {
			monitor.check();
			lines.addAll(LineBreaker.lines(paragraph, monitor));
			monitor.worked((double) (paragraph.start() + paragraph.length()) / Math.max(1, text.length()));
		}
		return place(text, face, setting, ordered, lines);
	}

	static List<Paragraph> paragraphs(String text, FontFace face, Setting setting, List<TextSpan> ordered,
			boolean vertical) {
		if (text.length() > LONGEST_TEXT) {
			throw new IllegalArgumentException("text has " + text.length() + " characters; at most " + LONGEST_TEXT
					+ " can be set at a time");
		}
		List<Paragraph> paragraphs = new ArrayList<>();
		for (LineEnds.Range line : LineEnds.lines(text)) {
			paragraphs.add(new Paragraph(text, line.start(), line.end(), face, setting, ordered, vertical));
		}
		return paragraphs;
	}

	private static SetText place(String text, FontFace face, Setting setting, List<TextSpan> spans,
			List<LineSetter> lines) {
		double block = Math.max(setting.measure(), lines.stream().mapToDouble(LineSetter::width).max().orElse(0));
		List<Letter> letters = new ArrayList<>();
		List<MissingGlyph> missing = new ArrayList<>();
		List<TextLine> placed = new ArrayList<>();
		double baseline = 0;
		for (LineSetter line : lines) {
			double left = left(line, setting, block);
			baseline += placed.isEmpty() ? 0 : Setting.LINE_DISTANCE * setting.lineSpacing() * line.capHeight();
			for (Letter letter : line.letters(placed.size())) {
				letters.add(letter.movedBy(left, baseline));
			}
			missing.addAll(line.missing());
			placed.add(new TextLine(line.start(), line.end(), left, line.width(), baseline));
		}
		missing.sort(Comparator.comparingInt(MissingGlyph::index));
		return new SetText(text, face, setting, letters, missing, placed, spans);
	}

	/** A justified line is stretched on the way, but not what remained of a broken paragraph. */
	private static double left(LineSetter line, Setting setting, double block) {
		if (setting.alignment() == Alignment.JUSTIFY) {
			if (line.isLastOfSeveral()) {
				return line.runsToTheLeft() ? block - line.width() : 0;
			}
			line.stretchTo(setting.measure() > 0 ? setting.measure() : block);
		}
		return left(setting.alignment(), block, line.width());
	}

	static double left(Alignment alignment, double widest, double width) {
		return switch (alignment) {
		case LEFT, JUSTIFY -> 0;
		case CENTRE -> (widest - width) / 2;
		case RIGHT -> widest - width;
		};
	}
}
