package org.frisket.typography.face;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.frisket.typography.internal.text.TagList;

/** Values for the axes of a variable font, by tag; an axis that is not named keeps its normal value. */
public record AxisSettings(SortedMap<String, Double> values) {

	public static final AxisSettings NONE = new AxisSettings(Map.of());

	/** @throws IllegalArgumentException if a tag has not four characters, or a value is not finite */
	public AxisSettings {
		values.forEach((tag, value) -> {
			TagList.check("axis", tag);
			if (!Double.isFinite(value)) {
				throw new IllegalArgumentException("axis “" + tag + "” has no finite value");
			}
		});
		values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
	}

	public AxisSettings(Map<String, Double> values) {
		this(new TreeMap<>(values));
	}

	/**
	 * @param text such as {@code wght=700, wdth=85}; commas, semicolons or blanks between them; may be empty
	 * @throws IllegalArgumentException naming the part that cannot be read and why
	 */
	public static AxisSettings parse(String text) {
		SortedMap<String, Double> values = new TreeMap<>();
		for (String part : TagList.parts(text)) {
			int equals = part.indexOf('=');
			if (equals < 0) {
				throw new IllegalArgumentException("“" + part + "” sets no value: write it as wght=700");
			}
			String tag = TagList.check("axis", part.substring(0, equals));
			if (values.put(tag, value(part, part.substring(equals + 1))) != null) {
				throw new IllegalArgumentException("axis “" + tag + "” is set twice");
			}
		}
		return new AxisSettings(values);
	}

	private static double value(String part, String number) {
		// plain decimal numbers only, not all that Java takes for one
		if (!number.matches("[+-]?(\\d{1,6}(\\.\\d{0,9})?|\\.\\d{1,9})")) {
			throw new IllegalArgumentException("“" + part + "”: “" + number + "” is not a number");
		}
		return Double.parseDouble(number);
	}

	public boolean isEmpty() {
		return values.isEmpty();
	}

	/** As {@link #parse} takes it, in the order of the tags. */
	@Override
	public String toString() {
		return values.entrySet().stream().map(e -> e.getKey() + "=" + plain(e.getValue()))
				.collect(Collectors.joining(","));
	}

	private static String plain(double value) {
		return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
	}
}
