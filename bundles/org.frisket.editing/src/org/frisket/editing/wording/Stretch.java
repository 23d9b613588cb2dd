package org.frisket.editing.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.FontRef;
import org.frisket.model.FrisketFactory;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;

/**
 * A part of a wording's text all of which is set alike.
 *
 * @param start    index of its first character (UTF-16)
 * @param end      index after its last character
 * @param font     of its own; null for that of the wording
 * @param height   of its own in mm; 0 for that of the wording
 * @param features besides those of the wording; null for none
 */
public record Stretch(int start, int end, FontRef font, double height, String features) {

	/** The text between two indices, parted wherever it begins to be set otherwise; what lies beyond it is left out. */
	public static List<Stretch> of(Wording wording, int from, int to) {
		int length = wording.getText() == null ? 0 : wording.getText().length();
		int start = Math.max(0, Math.min(from, length));
		int end = Math.max(start, Math.min(to, length));
		List<Stretch> stretches = new ArrayList<>();
		int at = start;
		for (TextSpan span : ordered(wording)) {
			int first = Math.max(at, span.getStart());
			int last = Math.min(end, span.getEnd());
			if (first < last) {
				if (at < first) {
					stretches.add(plain(at, first));
				}
				stretches.add(new Stretch(first, last, span.getFont(), span.getHeight(), span.getFeatures()));
				at = last;
			}
		}
		if (at < end) {
			stretches.add(plain(at, end));
		}
		return stretches;
	}

	private static List<TextSpan> ordered(Wording wording) {
		return wording.getSpans().stream().sorted(Comparator.comparingInt(TextSpan::getStart)).toList();
	}

	private static Stretch plain(int start, int end) {
		return new Stretch(start, end, null, 0, null);
	}

	/** The font it is set in. */
	public FontRef fontIn(Wording wording) {
		return font == null ? wording.getFont() : font;
	}

	/** The height of a capital in it, in mm. */
	public double heightIn(Wording wording) {
		return height > 0 ? height : wording.getHeight();
	}

	Stretch withFont(FontRef other) {
		return new Stretch(start, end, other, height, features);
	}

	Stretch withHeight(double other) {
		return new Stretch(start, end, font, other, features);
	}

	Stretch withFeatures(String other) {
		return new Stretch(start, end, font, height, other);
	}

	private Stretch upTo(int newEnd) {
		return new Stretch(start, newEnd, font, height, features);
	}

	/** What is as in the whole wording needs no word of its own. */
	private Stretch plainestIn(Wording wording) {
		return new Stretch(start, end, EcoreUtil.equals(font, wording.getFont()) ? null : font,
				height == wording.getHeight() || !(height > 0) ? 0 : height,
				features == null || features.isBlank() ? null : features);
	}

	private boolean isPlain() {
		return font == null && height == 0 && features == null;
	}

	private boolean isLike(Stretch other) {
		return EcoreUtil.equals(font, other.font) && height == other.height && Objects.equals(features, other.features);
	}

	/** Stretches as few as they can be: neighbours that are alike are one, and those that are as the wording are none. */
	static List<Stretch> merged(List<Stretch> stretches, Wording wording) {
		List<Stretch> merged = new ArrayList<>();
		for (Stretch each : stretches) {
			Stretch next = each.plainestIn(wording);
			Stretch last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
			if (last != null && last.end == next.start && last.isLike(next)) {
				merged.set(merged.size() - 1, last.upTo(next.end));
			} else {
				merged.add(next);
			}
		}
		merged.removeIf(Stretch::isPlain);
		return merged;
	}

	/** As it stands in a job. */
	TextSpan span() {
		TextSpan span = FrisketFactory.INSTANCE.createTextSpan();
		span.setStart(start);
		span.setEnd(end);
		span.setFont(EcoreUtil.copy(font));
		span.setHeight(height);
		span.setFeatures(features);
		return span;
	}

	/** Whether it is what a span of a job says. */
	boolean isSaidBy(TextSpan span) {
		return start == span.getStart() && end == span.getEnd()
				&& isLike(new Stretch(start, end, span.getFont(), span.getHeight(), span.getFeatures()));
	}
}
