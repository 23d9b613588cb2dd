package org.frisket.page.bars;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Bars below each other, each with its name, in parts.
 *
 * @param title    what is shown
 * @param foot     of what day it is, and whatever else is to be said under the title
 * @param unit     of all values, as it stands at the scale
 * @param parts    what the parts of each bar are
 * @param bars     in their order, from above
 * @param stacked  whether the parts of a bar lie behind each other; otherwise each begins at nothing, below the other
 * @param decimals that values are written with
 * @param least    where the scale ends at least, such as 100 for shares; 0 to leave it to the values
 */
public record BarChart(String title, String foot, String unit, List<String> parts, List<Bar> bars, boolean stacked,
		int decimals, double least) {

	/**
	 * @param values of the parts, not below 0; empty where there is none
	 */
	public record Bar(String name, List<OptionalDouble> values) {

		public Bar {
			values = List.copyOf(values);
			if (values.stream().anyMatch(value -> value.isPresent() && !(value.getAsDouble() >= 0))) {
				throw new IllegalArgumentException("a bar of " + values);
			}
		}

		double sum() {
			return values.stream().mapToDouble(value -> value.orElse(0)).sum();
		}

		double most() {
			return values.stream().mapToDouble(value -> value.orElse(0)).max().orElse(0);
		}
	}

	/** @throws IllegalArgumentException if a bar has not as many parts as there are */
	public BarChart {
		parts = List.copyOf(parts);
		bars = List.copyOf(bars);
		int count = parts.size();
		if (bars.stream().anyMatch(bar -> bar.values().size() != count)) {
			throw new IllegalArgumentException("bars of other than " + count + " parts");
		}
	}

	/** The longest of its bars, in their unit. */
	double most() {
		return bars.stream().mapToDouble(bar -> stacked ? bar.sum() : bar.most()).max().orElse(0);
	}
}
