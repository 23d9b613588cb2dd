package org.frisket.typography.stroke;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.typography.Letter;
import org.frisket.typography.MissingGlyph;
import org.frisket.typography.Setting;
import org.frisket.typography.TextLine;
import org.frisket.typography.TextSetter;
import org.frisket.typography.internal.text.LineEnds;

/**
 * Sets a text in a stroke font, from left to right. Of the setting the cap height, line spacing, tracking, word spacing
 * and alignment are heeded; justified lines are set left, and there is no measure. A character that the font lacks is
 * left out and reported; a blank that it lacks is as wide as half a cap height.
 */
public final class StrokeSetter {

	private static final double BLANK_SHARE = 0.5;

	private StrokeSetter() {
	}

	/** @throws IllegalArgumentException if the text is longer than {@value TextSetter#LONGEST_TEXT} characters */
	public static StrokeText set(String text, StrokeFont font, Setting setting, Monitor monitor) {
		if (text.length() > TextSetter.LONGEST_TEXT) {
			throw new IllegalArgumentException("text has " + text.length() + " characters; at most "
					+ TextSetter.LONGEST_TEXT + " can be set at a time");
		}
		List<Line> lines = new ArrayList<>();
		for (LineEnds.Range range : LineEnds.lines(text)) {
			monitor.check();
			lines.add(new Line(text, range, font, setting, lines.size()));
		}
		double widest = lines.stream().mapToDouble(l -> l.width).max().orElse(0);
		List<Letter> letters = new ArrayList<>();
		List<MissingGlyph> missing = new ArrayList<>();
		List<TextLine> placed = new ArrayList<>();
		for (Line line : lines) {
			double left = switch (setting.alignment()) {
			case LEFT, JUSTIFY -> 0;
			case CENTRE -> (widest - line.width) / 2;
			case RIGHT -> widest - line.width;
			};
			double baseline = placed.size() * setting.lineDistance();
			line.letters.forEach(letter -> letters.add(letter.movedBy(left, baseline)));
			missing.addAll(line.missing);
			placed.add(new TextLine(line.range.start(), line.range.end(), left, line.width, baseline));
		}
		return new StrokeText(text, font, setting, letters, missing, placed);
	}

	private static final class Line {

		final LineEnds.Range range;
		final List<Letter> letters = new ArrayList<>();
		final List<MissingGlyph> missing = new ArrayList<>();
		double width;
		private final double scale;
		private final Setting setting;
		private boolean empty = true;
		private boolean blankBefore;
		private int word;

		Line(String text, LineEnds.Range range, StrokeFont font, Setting setting, int number) {
			this.range = range;
			this.setting = setting;
			scale = setting.capHeight() / font.capHeight();
			double pen = 0;
			for (int i = range.start(); i < range.end();) {
				int codePoint = text.codePointAt(i);
				int length = font.lengthAt(text, i, range.end());
				boolean blank = Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint)
						|| Character.isISOControl(codePoint);
				if (length == 0 && !blank) {
					missing.add(new MissingGlyph(codePoint, i));
					i += Character.charCount(codePoint);
					continue;
				}
				int end = i + Math.max(length, Character.charCount(codePoint));
				StrokeGlyph glyph = length > 0 ? font.glyphs().get(text.substring(i, i + length))
						: new StrokeGlyph(Outline.EMPTY, BLANK_SHARE * font.capHeight());
				pen += empty ? 0 : setting.tracking();
				empty = false;
				add(glyph, i, end, number, pen);
				pen += glyph.advance() * scale + (blank ? setting.wordSpacing() : 0);
				width = blank ? width : pen;
				blankBefore = blank;
				i = end;
			}
		}

		private void add(StrokeGlyph glyph, int start, int end, int number, double pen) {
			if (!glyph.strokes().isEmpty()) {
				word += blankBefore && !letters.isEmpty() ? 1 : 0;
				Transform place = Transform.scaling(scale, scale).then(Transform.translation(pen, 0));
				letters.add(new Letter(start, end, number, word, List.of(), glyph.strokes().transformed(place),
						new Point(pen, 0), glyph.advance() * scale, -1));
			}
		}
	}
}
