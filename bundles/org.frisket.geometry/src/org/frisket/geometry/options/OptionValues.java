package org.frisket.geometry.options;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Values for the options of one step, checked and complete. */
public final class OptionValues {

	private final Map<String, Object> values;

	private OptionValues(Map<String, Object> values) {
		this.values = values;
	}

	/**
	 * The given texts as values, defaults for the rest.
	 *
	 * @throws IllegalArgumentException if a text is no value of its option or names an option there is not
	 */
	public static OptionValues of(List<Option> options, Map<String, String> texts) {
		Map<String, Object> values = new LinkedHashMap<>();
		for (Option option : options) {
			values.put(option.name(), option.parse(texts.getOrDefault(option.name(), option.initial())));
		}
		for (String name : texts.keySet()) {
			if (!values.containsKey(name)) {
				throw new IllegalArgumentException("there is no option “" + name + "” here; there are "
						+ options.stream().map(Option::name).collect(Collectors.joining(", ")));
			}
		}
		return new OptionValues(values);
	}

	public static OptionValues defaults(List<Option> options) {
		return of(options, Map.of());
	}

	/** A length in mm. */
	public double length(Option option) {
		return (Double) values.get(option.name());
	}

	/** A number in the unit of its option. */
	public double number(Option option) {
		return (Double) values.get(option.name());
	}

	public int count(Option option) {
		return (Integer) values.get(option.name());
	}

	/** The chosen word or the free text. */
	public String text(Option option) {
		return (String) values.get(option.name());
	}
}
