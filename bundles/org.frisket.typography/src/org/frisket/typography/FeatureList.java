package org.frisket.typography;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;

import org.frisket.typography.internal.text.TagList;

/**
 * OpenType features switched on, off or to one of several forms, by tag; they come after all that a setting switches
 * by itself and so prevail over it. What a font lacks has no effect.
 */
public record FeatureList(Map<String, Integer> values) {

	public static final FeatureList NONE = new FeatureList(Map.of());

	private static final int HIGHEST = 65_535;

	/** @throws IllegalArgumentException if a tag has not four letters or digits, or a value is negative */
	public FeatureList {
		values.forEach((tag, value) -> {
			TagList.check("feature", tag);
			if (value < 0 || value > HIGHEST) {
				throw new IllegalArgumentException("feature “" + tag + "” cannot be set to " + value);
			}
		});
		values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
	}

	/**
	 * @param text such as {@code smcp, -kern, ss01=2}: a tag alone or with a plus switches on, with a minus off, with
	 *             a number chooses a form (0 is off); may be empty
	 * @throws IllegalArgumentException naming the part that cannot be read and why
	 */
	public static FeatureList parse(String text) {
		Map<String, Integer> values = new LinkedHashMap<>();
		for (String part : TagList.parts(text)) {
			boolean off = part.startsWith("-");
			String plain = off || part.startsWith("+") ? part.substring(1) : part;
			int equals = plain.indexOf('=');
			String tag = TagList.check("feature", equals < 0 ? plain : plain.substring(0, equals));
			int value = off ? 0 : 1;
			if (equals >= 0) {
				if (!plain.equals(part)) {
					throw new IllegalArgumentException("“" + part + "” has a sign and a value: one of them is enough");
				}
				value = value(part, plain.substring(equals + 1));
			}
			if (values.put(tag, value) != null) {
				throw new IllegalArgumentException("feature “" + tag + "” is set twice");
			}
		}
		return new FeatureList(values);
	}

	private static int value(String part, String number) {
		if (!number.matches("\\d{1,5}") || Integer.parseInt(number) > HIGHEST) {
			throw new IllegalArgumentException(
					"“" + part + "”: “" + number + "” is not a whole number from 0 to 65535");
		}
		return Integer.parseInt(number);
	}

	public boolean isEmpty() {
		return values.isEmpty();
	}

	public OptionalInt value(String tag) {
		return values.containsKey(tag) ? OptionalInt.of(values.get(tag)) : OptionalInt.empty();
	}

	/** These features, and those of the other list where both speak of the same. */
	public FeatureList with(FeatureList other) {
		Map<String, Integer> both = new LinkedHashMap<>(values);
		both.putAll(other.values);
		return new FeatureList(both);
	}

	/** These features with one of them set to a value, or not spoken of any more. */
	public FeatureList with(String tag, OptionalInt value) {
		Map<String, Integer> all = new LinkedHashMap<>(values);
		if (value.isPresent()) {
			all.put(tag, value.getAsInt());
		} else {
			all.remove(tag);
		}
		return new FeatureList(all);
	}

	/** As {@link #parse} takes it. */
	@Override
	public String toString() {
		return values.entrySet().stream().map(e -> switch (e.getValue()) {
		case 0 -> "-" + e.getKey();
		case 1 -> e.getKey();
		default -> e.getKey() + "=" + e.getValue();
		}).collect(Collectors.joining(","));
	}
}
