package org.frisket.material.weights;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/**
 * A number with its unit as people write it. The number is kept as it is written: its last digit tells how finely it was
 * read off.
 */
record Amount(BigDecimal number, String unit) {

	private static final Pattern FORM = Pattern
			.compile("([+-]?(?:\\d{1,12}(?:\\.\\d{0,12})?|\\.\\d{1,12}))\\s*([^\\d\\s.,+-].*)?");

	private static final Map<String, BigDecimal> LENGTHS = Map.of("mm", BigDecimal.ONE, "cm", BigDecimal.TEN, "m",
			new BigDecimal(1000), "in", new BigDecimal("25.4"), "\"", new BigDecimal("25.4"), "ft",
			new BigDecimal("304.8"), "µm", new BigDecimal("0.001"));
	private static final Map<String, BigDecimal> MASSES = Map.of("g", BigDecimal.ONE, "kg", new BigDecimal(1000), "mg",
			new BigDecimal("0.001"), "lb", new BigDecimal("453.59237"), "oz", new BigDecimal("28.349523125"));

	/** A decimal comma at the beginning of an amount; points and further commas are for nobody to guess at. */
	private static final Pattern COMMA = Pattern.compile("^([+-]?)(\\d{0,12}),(\\d{1,12})(?![\\d.,])");
	private static final int THOUSANDS = 3;

	/** With a point for a decimal comma. One that may part thousands, as in 1,500, stays and is refused. */
	private static String pointed(String text) {
		Matcher comma = COMMA.matcher(text);
		if (!comma.find()) {
			return text;
		}
		String whole = comma.group(2);
		boolean open = comma.group(3).length() == THOUSANDS && !whole.isEmpty() && whole.length() <= THOUSANDS
				&& !whole.startsWith("0");
		return open ? text : comma.replaceFirst("$1$2.$3");
	}

	/** @throws MeasureException if there is no number at the beginning */
	static Amount parse(String text, String example) {
		Matcher form = FORM.matcher(pointed(text.strip()));
		if (!form.matches()) {
			throw new MeasureException(NLS.bind(Messages.Amount_unreadable, text, example));
		}
		String number = form.group(1);
		return new Amount(new BigDecimal(number.endsWith(".") ? number + "0" : number),
				form.group(2) == null ? "" : unit(form.group(2)));
	}

	private static String unit(String text) {
		return text.strip().toLowerCase(Locale.ROOT).replace('μ', 'µ').replaceAll("^(inch|inches)$", "in")
				.replaceAll("^(um|micron|microns)$", "µm").replaceAll("^(lbs?\\.?|pounds?|#)$", "lb").replace("′′", "\"")
				.replace("″", "\"");
	}

	/** A length in mm. */
	static Amount length(String text) {
		return parse(text, "40mm, 12in").inUnit(text, LENGTHS, "mm, cm, m, in");
	}

	/** A mass in g. */
	static Amount mass(String text) {
		return parse(text, "163.3g, 5.76oz").inUnit(text, MASSES, "g, kg, oz, lb");
	}

	private Amount inUnit(String text, Map<String, BigDecimal> factors, String known) {
		BigDecimal factor = factors.get(unit);
		if (factor == null) {
			throw new MeasureException(unit.isEmpty() ? NLS.bind(Messages.Amount_noUnit, text, known)
					: NLS.bind(Messages.Amount_unknownUnit, new Object[] { text, unit, known }));
		}
		Measures.above0(number, Messages.Amount_number, unit);
		return new Amount(number.multiply(factor), unit);
	}
}
