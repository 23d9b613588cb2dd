package org.frisket.material.tools;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** The options of one setting in a machine's own steps. Two zeros for what the steps mean say that nobody knows. */
final class ScaleOptions {

	private static final double MOST = 1_000_000;

	private final Option unit;
	private final Option least;
	private final Option most;
	private final Option step;
	private final Option leastMeans;
	private final Option mostMeans;

	/** @param what {@code speed} or {@code pressure} @param meaning the unit of what the steps mean */
	ScaleOptions(String what, String meaning) {
		boolean speed = what.equals("speed");
		unit = Option.text(what + "-unit",
				speed ? Messages.ScaleOptions_speedUnit : Messages.ScaleOptions_pressureUnit, "%");
		least = Option.number(what + "-least",
				speed ? Messages.ScaleOptions_speedLeast : Messages.ScaleOptions_pressureLeast, "", 0, 0, MOST);
		most = Option.number(what + "-most",
				speed ? Messages.ScaleOptions_speedMost : Messages.ScaleOptions_pressureMost, "", 100, 0, MOST);
		step = Option.number(what + "-step",
				speed ? Messages.ScaleOptions_speedStep : Messages.ScaleOptions_pressureStep, "", 1, 0.001, MOST);
		leastMeans = Option.number(what + "-least-means", NLS.bind(Messages.ScaleOptions_leastMeans, meaning), meaning,
				0, 0, MOST);
		mostMeans = Option.number(what + "-most-means", NLS.bind(Messages.ScaleOptions_mostMeans, meaning), meaning, 0,
				0, MOST);
	}

	List<Option> all() {
		return List.of(unit, least, most, step, leastMeans, mostMeans);
	}

	List<Problem> problems(OptionValues values) {
		List<Problem> problems = new ArrayList<>();
		double range = values.number(most) - values.number(least);
		if (!(range > 0)) {
			problems.add(Checks.problem(most, Messages.ScaleOptions_order, least.name()));
		} else if (values.number(step) > range) {
			problems.add(Checks.problem(step, Messages.ScaleOptions_wideStep, Checks.number(range)));
		}
		if (isKnown(values) && !(values.number(leastMeans) < values.number(mostMeans))) {
			problems.add(Checks.problem(mostMeans, Messages.ScaleOptions_order, leastMeans.name()));
		}
		return problems;
	}

	private boolean isKnown(OptionValues values) {
		return values.number(leastMeans) != 0 || values.number(mostMeans) != 0;
	}

	NativeScale scale(OptionValues values) {
		return new NativeScale(values.text(unit).strip(), values.number(least), values.number(most),
				values.number(step), isKnown(values)
						? new NativeScale.Meaning(values.number(leastMeans), values.number(mostMeans))
						: null);
	}

	Map<String, String> texts(NativeScale scale) {
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put(unit.name(), scale.unit());
		texts.put(least.name(), Checks.number(scale.least()));
		texts.put(most.name(), Checks.number(scale.most()));
		texts.put(step.name(), Checks.number(scale.step()));
		NativeScale.Meaning means = scale.means();
		texts.put(leastMeans.name(), means == null ? "0" : Checks.number(means.least()));
		texts.put(mostMeans.name(), means == null ? "0" : Checks.number(means.most()));
		return texts;
	}
}
