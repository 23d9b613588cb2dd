package org.frisket.material.weights;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

/** What stands on a pack: a grammage, pounds with or without their grade, or a caliper. */
public sealed interface Reading {

	/** In g/m². */
	record Grammage(BigDecimal value) implements Reading {

		public Grammage {
			value = Measures.grammage(value);
		}
	}

	record Basis(BasisWeight weight) implements Reading {
	}

	/** Pounds of nobody knows which grade. */
	record Pounds(BigDecimal value) implements Reading {

		public Pounds {
			value = Measures.plain(Measures.above0(value, Messages.Measures_pounds, "lb"));
		}
	}

	record Caliper(Thickness thickness) implements Reading {
	}

	/** Pounds, and a grade behind them. */
	Pattern POUNDS = Pattern.compile("(?:lbs?\\.?|pounds?|#)\\s*(.*)");

	/** Units of grammage and caliper; a point of paper is a mil. */
	Map<String, String> UNITS = Map.ofEntries(Map.entry("g/m2", "g/m2"), Map.entry("g/m²", "g/m2"),
			Map.entry("g/m^2", "g/m2"), Map.entry("g/qm", "g/m2"), Map.entry("gsm", "g/m2"), Map.entry("gm2", "g/m2"),
			Map.entry("pt", "mil"), Map.entry("pts", "mil"), Map.entry("point", "mil"), Map.entry("points", "mil"),
			Map.entry("mil", "mil"), Map.entry("mils", "mil"), Map.entry("mm", "mm"), Map.entry("in", "in"),
			Map.entry("µm", "µm"));

	/**
	 * Such as {@code 65 lb cover}, {@code 216 g/m2}, {@code 10 pt}, {@code 0.3 mm}.
	 *
	 * @throws MeasureException if it is none of these, or no paper is like that; the message quotes it
	 */
	static Reading parse(String text) {
		Amount amount = Amount.parse(text, Messages.Reading_example);
		Matcher pounds = POUNDS.matcher(amount.unit());
		if (pounds.matches()) {
			return ofPounds(text, amount.number(), pounds.group(1));
		}
		BigDecimal number = amount.number();
		return switch (UNITS.getOrDefault(amount.unit(), "")) {
		case "g/m2" -> new Grammage(number);
		case "mil" -> new Caliper(Thickness.ofMils(number));
		case "mm" -> new Caliper(new Thickness(number));
		case "in" -> new Caliper(Thickness.ofMils(number.movePointRight(3)));
		case "µm" -> new Caliper(Thickness.ofMicrometres(number));
		default -> throw unknown(text, amount.unit());
		};
	}

	private static Reading ofPounds(String text, BigDecimal number, String grade) {
		if (grade.isEmpty()) {
			return new Pounds(number);
		}
		Optional<Grade> known = Grade.named(grade);
		return new Basis(new BasisWeight(number, known.orElseThrow(() -> unknown(text, grade))));
	}

	private static MeasureException unknown(String text, String unit) {
		return new MeasureException(NLS.bind(Messages.Reading_unit, new Object[] { text, unit,
				Arrays.stream(Grade.values()).map(grade -> grade.name().toLowerCase(Locale.ROOT)).collect(
						Collectors.joining(", ")) }));
	}
}
