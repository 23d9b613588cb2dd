package org.frisket.orders.paper.quote;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.InvalidStockException;
import org.frisket.material.Price;

/** What can be chosen for a quote, described. Nothing is added or taken off unless the studio says so. */
public final class QuoteOptions {

	private static final double MOST_MARK_UP = 10_000;
	private static final double MOST_MONEY = 1_000_000;

	/** Of the studio as a whole, and so none of a single quote: see {@link StudioQuote}. */
	static final Option RATE = Option.text("rate", Messages.QuoteOptions_rate, "");
	static final Option CURRENCY = Option.text("currency", Messages.QuoteOptions_currency, "");
	static final Option MATERIAL = Option.number("material-mark-up", Messages.QuoteOptions_material, "%", 0, 0, MOST_MARK_UP);
	static final Option TIME = Option.number("time-mark-up", Messages.QuoteOptions_time, "%", 0, 0, MOST_MARK_UP);
	static final Option SET_UP = Option.number("set-up", Messages.QuoteOptions_setUp, "min", 0, 0, 100_000);
	static final Option EXTRAS = Option.text("extras", Messages.QuoteOptions_extras, "");
	static final Option MINIMUM = Option.number("minimum", Messages.QuoteOptions_minimum, "", 0, 0, MOST_MONEY);
	static final Option DISCOUNT = Option.number("discount", Messages.QuoteOptions_discount, "%", 0, 0, 100);
	static final Option TAX = Option.number("tax", Messages.QuoteOptions_tax, "%", 0, 0, 100);
	static final Option ROUNDING = Option.choice("rounding", Messages.QuoteOptions_rounding, "total", "line");
	static final Option VALID = Option.count("valid-days", Messages.QuoteOptions_valid, 30, 0, 3650);

	private static final List<Option> ALL = List.of(CURRENCY, MATERIAL, TIME, SET_UP, EXTRAS, MINIMUM, DISCOUNT, TAX, ROUNDING,
			VALID);

	private QuoteOptions() {
	}

	public static List<Option> options() {
		return ALL;
	}

	/**
	 * @param values of {@link #options()}
	 * @throws IllegalArgumentException if extras or the currency are none, with the reason in the user's language
	 */
	public static QuoteRules rules(OptionValues values) {
		return new QuoteRules(currency(values.text(CURRENCY)), decimal(values, MATERIAL), decimal(values, TIME),
				decimal(values, SET_UP), Extra.parse(values.text(EXTRAS)), decimal(values, MINIMUM), decimal(values, DISCOUNT),
				decimal(values, TAX), Rounding.valueOf(values.text(ROUNDING).toUpperCase(Locale.ROOT)), values.count(VALID));
	}

	/** The decimal that was typed: the shortest one that stands for the number. */
	private static BigDecimal decimal(OptionValues values, Option option) {
		return BigDecimal.valueOf(values.number(option));
	}

	private static Optional<Currency> currency(String code) {
		if (code.isBlank()) {
			return Optional.empty();
		}
		try {
			return Optional.of(Price.currency(code.strip().toUpperCase(Locale.ROOT)));
		} catch (InvalidStockException e) {
			throw new IllegalArgumentException(e.getMessage(), e);
		}
	}
}
