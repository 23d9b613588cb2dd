package org.frisket.material.csv;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.frisket.material.Price;
import org.frisket.material.StockBuilder;
import org.frisket.material.StockField;
import org.frisket.material.weights.Measures;

import org.eclipse.osgi.util.NLS;

/**
 * A column, by its header: a field and the unit of its numbers, such as {@code grammage g/m²} or {@code Caliper (mil)}.
 *
 * @param unit empty where there is none
 */
record CsvColumn(String header, StockField field, String unit) {

	/** Longer words first, since some begin like others. */
	private static final List<StockField> FIELDS = Arrays.stream(StockField.values())
			.sorted(Comparator.comparing((StockField field) -> field.word().length()).reversed()).toList();

	private static final Map<StockField, List<String>> UNITS = Map.of(StockField.GRAMMAGE,
			List.of("", "g/m2", "gsm", "g/qm"), StockField.BASIS_WEIGHT, List.of("", "lb", "lbs", "#"),
			StockField.CALIPER, List.of("mm", "mil", "mils", "pt", "points", "µm", "um"));

	private static final BigDecimal MM_PER_MIL = new BigDecimal("0.0254");

	/**
	 * Empty if no field is named like this.
	 *
	 * @throws IllegalArgumentException if its unit is none of the field's
	 */
	static Optional<CsvColumn> of(String header) {
		String text = header.toLowerCase(Locale.ROOT).replaceAll("[()\\[\\]_]", " ").replace('²', '2').replace('μ', 'µ')
				.replaceAll("\\s+", " ").strip();
		return FIELDS.stream().filter(field -> text.equals(field.word()) || text.startsWith(field.word() + ' '))
				.findFirst().map(field -> new CsvColumn(header, field, unit(header, field, text)));
	}

	private static String unit(String header, StockField field, String text) {
		String unit = text.substring(field.word().length()).strip();
		if (field == StockField.PRICE) {
			return unit.isEmpty() ? unit : Price.currency(unit.toUpperCase(Locale.ROOT)).getCurrencyCode();
		}
		List<String> units = UNITS.getOrDefault(field, List.of(""));
		if (!units.contains(unit)) {
			throw new IllegalArgumentException(NLS.bind(unit.isEmpty() ? Messages.CsvColumn_noUnit
					: Messages.CsvColumn_unit, header, String.join(", ", units.stream().filter(u -> !u.isEmpty()).toList())));
		}
		return unit;
	}

	/**
	 * @param comma whether numbers of this table have a decimal comma
	 * @throws IllegalArgumentException if it is no value of the field
	 */
	void set(StockBuilder stock, String cell, boolean comma) {
		if (cell.isBlank()) {
			return;
		}
		if (field == StockField.PRICE && !unit.isEmpty()) {
			stock.currency(Price.currency(unit));
		}
		field.set(stock, field.isNumber() ? inOurUnit(number(cell.strip(), comma)) : cell);
	}

	private static String number(String cell, boolean comma) {
		if (comma && cell.indexOf('.') >= 0) {
			throw new IllegalArgumentException(NLS.bind(Messages.CsvColumn_point, cell));
		}
		return comma ? cell.replace(',', '.') : cell;
	}

	private String inOurUnit(String number) {
		if (field != StockField.CALIPER || unit.equals("mm") || !number.matches("[+-]?[\\d.]{1,30}")) {
			return number;
		}
		try {
			BigDecimal value = new BigDecimal(number);
			return Measures.plain(unit.equals("µm") || unit.equals("um") ? value.movePointLeft(3)
					: value.multiply(MM_PER_MIL)).toPlainString();
		} catch (NumberFormatException noNumber) {
			return number;
		}
	}
}
