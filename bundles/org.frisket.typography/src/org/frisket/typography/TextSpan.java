package org.frisket.typography;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A part of a text that is set otherwise than the rest. No kerning and no ligature reaches across its ends.
 *
 * @param start     index of its first character (UTF-16)
 * @param end       index after its last one
 * @param face      of its own, if any
 * @param capHeight of its own in mm, if any
 * @param features  besides those of the setting
 */
public record TextSpan(int start, int end, Optional<FontFace> face, OptionalDouble capHeight, FeatureList features) {

	/** @throws IllegalArgumentException if it ends before it starts, or its cap height is not positive and finite */
	public TextSpan {
		if (start < 0 || end < start) {
			throw new IllegalArgumentException("a span from " + start + " to " + end);
		}
		if (capHeight.isPresent() && !(capHeight.getAsDouble() > 0 && Double.isFinite(capHeight.getAsDouble()))) {
			throw new IllegalArgumentException(
					"cap height must be positive and finite, got " + capHeight.getAsDouble());
		}
	}

	public static TextSpan inFace(int start, int end, FontFace face) {
		return new TextSpan(start, end, Optional.of(face), OptionalDouble.empty(), FeatureList.NONE);
	}

	public static TextSpan ofCapHeight(int start, int end, double capHeight) {
		return new TextSpan(start, end, Optional.empty(), OptionalDouble.of(capHeight), FeatureList.NONE);
	}

	public static TextSpan withFeatures(int start, int end, FeatureList features) {
		return new TextSpan(start, end, Optional.empty(), OptionalDouble.empty(), features);
	}

	/**
	 * In the order of the text; empty ones left out.
	 *
	 * @throws IllegalArgumentException if two overlap
	 */
	static List<TextSpan> ordered(List<TextSpan> spans) {
		List<TextSpan> ordered = spans.stream().filter(s -> s.end() > s.start())
				.sorted(Comparator.comparingInt(TextSpan::start)).toList();
		for (int i = 1; i < ordered.size(); i++) {
			if (ordered.get(i).start() < ordered.get(i - 1).end()) {
				throw new IllegalArgumentException("two spans overlap at character " + ordered.get(i).start());
			}
		}
		return ordered;
	}
}
