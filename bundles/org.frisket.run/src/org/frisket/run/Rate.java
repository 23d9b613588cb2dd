package org.frisket.run;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.InvalidStockException;
import org.frisket.material.Price;
import org.frisket.studio.StudioFolder;

/** What an hour at a machine costs. */
public record Rate(Price hour) {

	/** The studio's preference that holds it. */
	public static final String KEY = "run.rate";
	private static final Pattern FORM = Pattern.compile("\\s*(\\d{1,7}(?:[.,]\\d{1,4})?)\\s*([A-Za-z]{3})\\s*");

	/**
	 * As people type it: {@code 30.00 EUR}.
	 *
	 * @throws IllegalArgumentException with the reason in the user's language
	 */
	public static Rate parse(String text) {
		Matcher form = FORM.matcher(text);
		if (!form.matches()) {
			throw new IllegalArgumentException(NLS.bind(Messages.Rate_form, text));
		}
		try {
			Currency currency = Price.currency(form.group(2).toUpperCase(Locale.ROOT));
			return new Rate(new Price(new BigDecimal(form.group(1).replace(',', '.')), currency));
		} catch (InvalidStockException e) {
			throw new IllegalArgumentException(e.getMessage(), e);
		}
	}

	/**
	 * The studio's; empty if it has set none.
	 *
	 * @throws IOException              if its preferences cannot be read
	 * @throws IllegalArgumentException if what they say is no rate
	 */
	public static Optional<Rate> of(StudioFolder studio) throws IOException {
		return studio.preferences().get(KEY).filter(text -> !text.isBlank()).map(Rate::parse);
	}

	/** As {@link #parse} reads it. */
	@Override
	public String toString() {
		return RunCost.text(hour);
	}
}
