package org.frisket.material.sizes;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.material.weights.Lengths;
import org.frisket.material.weights.MeasureException;
import org.frisket.material.weights.Measures;

import org.eclipse.osgi.util.NLS;

/** Forms of stock as people write them: {@code A4}, {@code 12x12in}, {@code 210x297mm}, {@code roll 610mm x 25m}. */
public final class Formats {

	private static final Pattern ROLL = Pattern.compile("(?i)roll\\s+(\\S[^x×]*?)\\s*(?:[x×]\\s*(.+))?");
	private static final Pattern SIDES = Pattern.compile("([\\d.,]+)\\s*([^\\d\\s.,x×]*)\\s*[x×]\\s*([\\d.,]+)\\s*(\\S*)");
	/** In mm. */
	private static final BigDecimal LONGEST_SIDE = new BigDecimal(5_000);
	private static final BigDecimal LONGEST_ROLL = new BigDecimal(10_000_000);
	private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
	private static final int INCH_DECIMALS = 3;
	private static final int MM_DECIMALS = 6;

	private Formats() {
	}

	/** @throws MeasureException if it is neither a sheet nor a roll; the message quotes it */
	public static Format parse(String text) {
		Matcher roll = ROLL.matcher(text.strip());
		if (!roll.matches()) {
			return sheet(text);
		}
		return new Format.Roll(Lengths.parse(roll.group(1)), Optional.ofNullable(roll.group(2)).map(Lengths::parse));
	}

	/**
	 * A sheet by its name or its sides; a side without a unit takes that of the other.
	 *
	 * @throws MeasureException if it is neither; the message quotes it
	 */
	public static Format.Sheet sheet(String text) {
		Optional<PaperSize> named = PaperSize.named(text);
		if (named.isPresent()) {
			return named.get().sheet();
		}
		Matcher sides = SIDES.matcher(text.strip().toLowerCase(Locale.ROOT));
		if (!sides.matches()) {
			throw new MeasureException(NLS.bind(Messages.Formats_noSize, text));
		}
		String unit = sides.group(2).isEmpty() ? sides.group(4) : sides.group(2);
		return new Format.Sheet(Lengths.parse(sides.group(1) + unit), Lengths.parse(
				sides.group(3) + (sides.group(4).isEmpty() ? unit : sides.group(4))));
	}

	static String text(Format.Sheet sheet) {
		return PaperSize.of(sheet).map(PaperSize::name).orElseGet(() -> {
			Optional<String> width = inches(sheet.width());
			Optional<String> height = inches(sheet.height());
			return width.isPresent() && height.isPresent() ? width.get() + 'x' + height.get() + "in"
					: sheet.width().toPlainString() + 'x' + sheet.height().toPlainString() + "mm";
		});
	}

	static String text(Format.Roll roll) {
		return "roll " + length(roll.width(), inches(roll.width()))
				+ roll.length().map(length -> " x " + length(length, inches(length))).orElse("");
	}

	private static String length(BigDecimal mm, Optional<String> inches) {
		return inches.map(number -> number + "in").orElseGet(() -> mm.toPlainString() + "mm");
	}

	/** Of what is no whole number of mm but comes out even in inches. */
	private static Optional<String> inches(BigDecimal mm) {
		BigDecimal inches = Measures.rounded(mm.divide(MM_PER_INCH, java.math.MathContext.DECIMAL64), INCH_DECIMALS);
		return mm.scale() > 0 && inches.multiply(MM_PER_INCH).compareTo(mm) == 0 ? Optional.of(inches.toPlainString())
				: Optional.empty();
	}

	static BigDecimal side(BigDecimal mm) {
		return within(mm, LONGEST_SIDE);
	}

	static BigDecimal length(BigDecimal mm) {
		return within(mm, LONGEST_ROLL);
	}

	private static BigDecimal within(BigDecimal mm, BigDecimal longest) {
		BigDecimal plain = Measures.plain(mm);
		if (plain.signum() <= 0 || plain.compareTo(longest) > 0 || plain.scale() > MM_DECIMALS) {
			throw new MeasureException(NLS.bind(Messages.Formats_side, Measures.text(mm, MM_DECIMALS),
					longest.toPlainString()));
		}
		return plain;
	}
}
