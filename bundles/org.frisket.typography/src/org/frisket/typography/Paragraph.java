package org.frisket.typography;

import java.util.List;

import org.frisket.typography.internal.shape.Run;
import org.frisket.typography.internal.shape.Shaping;

import com.ibm.icu.text.Bidi;

/** A text up to a line end of its own, made ready to be shaped: what cannot be shown has become a blank or nothing. */
final class Paragraph {

	/** Shaped like any character that no font has: a noncharacter. */
	private static final char NOTHING = '\uFFFF';

	private final String text;
	private final int start;
	private final FontFace face;
	private final Setting setting;
	private final List<TextSpan> spans;
	private final boolean vertical;
	private final char[] shaped;
	private final Bidi bidi;

	/**
	 * @param text     the whole text
	 * @param start    where the paragraph starts in it
	 * @param end      where it ends, before its line end
	 * @param spans    of the whole text, in its order
	 * @param vertical whether its lines run down
	 */
	Paragraph(String text, int start, int end, FontFace face, Setting setting, List<TextSpan> spans,
			boolean vertical) {
		this.text = text.substring(start, end);
		this.start = start;
		this.face = face;
		this.setting = setting;
		this.spans = spans;
		this.vertical = vertical;
		shaped = shaped(this.text);
		bidi = vertical ? null : Run.bidi(shaped);
	}

	private static char[] shaped(String text) {
		char[] chars = text.toCharArray();
		for (int i = 0; i < chars.length; i++) {
			if (Character.isISOControl(chars[i])) {
				chars[i] = ' ';
			} else if (Character.isHighSurrogate(chars[i]) && i + 1 < chars.length
					&& Character.isLowSurrogate(chars[i + 1])) {
				i++;
			} else if (Character.isSurrogate(chars[i])) {
				chars[i] = NOTHING;
			}
		}
		return chars;
	}

	static boolean isBlank(int c) {
		return Character.isWhitespace(c) || Character.isSpaceChar(c);
	}

	/** Of the paragraph alone; indices below are into it. */
	String text() {
		return text;
	}

	int start() {
		return start;
	}

	int length() {
		return shaped.length;
	}

	char[] shaped() {
		return shaped;
	}

	Setting setting() {
		return setting;
	}

	boolean runsToTheLeft() {
		return bidi != null && !bidi.baseIsLeftToRight();
	}

	boolean isBlankAt(int index) {
		return isBlank(shaped[index]);
	}

	/** The end without the blanks before it. */
	int trimmed(int from, int to) {
		int end = to;
		while (end > from && isBlankAt(end - 1)) {
			end--;
		}
		return end;
	}

	/** From left to right, or downwards. */
	List<Run> runs(int from, int to) {
		return Run.of(shaped, bidi, from, to, i -> span(i) != span(i - 1));
	}

	/** Number of the span a character belongs to, -1 for none. */
	int span(int index) {
		int at = start + index;
		int low = 0;
		int high = spans.size() - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			TextSpan span = spans.get(middle);
			if (at < span.start()) {
				high = middle - 1;
			} else if (at >= span.end()) {
				low = middle + 1;
			} else {
				return middle;
			}
		}
		return -1;
	}

	TextStyle style(int index) {
		int number = span(index);
		FeatureList features = setting.features();
		FontFace own = face;
		double capHeight = setting.capHeight();
		if (number >= 0) {
			TextSpan span = spans.get(number);
			features = features.with(span.features());
			own = span.face().orElse(face);
			capHeight = span.capHeight().orElse(capHeight);
		}
		return new TextStyle(own, capHeight,
				new Shaping(setting.kerning(), setting.ligatures(), setting.language(), features, vertical), number);
	}
}
