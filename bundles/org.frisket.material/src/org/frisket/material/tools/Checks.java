package org.frisket.material.tools;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Texts of options, checked one by one so that a form can say all that is wrong at once. */
final class Checks {

	private static final MathContext DIGITS = new MathContext(9);

	private Checks() {
	}

	static List<Problem> each(List<Option> options, Map<String, String> texts) {
		List<Problem> problems = new ArrayList<>();
		for (Option option : options) {
			String text = texts.get(option.name());
			if (text != null) {
				try {
					OptionValues.of(List.of(option), Map.of(option.name(), text));
				} catch (IllegalArgumentException e) {
					problems.add(new Problem(option.name(), e.getMessage()));
				}
			}
		}
		for (String name : texts.keySet()) {
			if (options.stream().noneMatch(option -> option.name().equals(name))) {
				problems.add(new Problem(name, NLS.bind(Messages.Checks_unknown, name,
						String.join(", ", options.stream().map(Option::name).toList()))));
			}
		}
		return problems;
	}

	/** A message whose first place is the option's name. */
	static Problem problem(Option option, String message, Object... values) {
		Object[] all = new Object[values.length + 1];
		all[0] = option.name();
		System.arraycopy(values, 0, all, 1, values.length);
		return new Problem(option.name(), NLS.bind(message, all));
	}

	static void refuse(List<Problem> problems) {
		if (!problems.isEmpty()) {
			throw new IllegalArgumentException(problems.get(0).message());
		}
	}

	/** At nine digits, which nobody measures, and without an exponent. */
	static String number(double value) {
		return value == 0 ? "0" : new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
	}

	static String length(double mm) {
		return number(mm) + "mm";
	}
}
