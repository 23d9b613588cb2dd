package org.frisket.orders.paper.quote;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * How a quote is made of costs. Shares are in %.
 *
 * @param currency empty for that of the stock's prices, else of the rate
 * @param material added to what material costs
 * @param time     added to what time costs
 * @param setUp    minutes of setting up, which cost as much as the machine's time
 * @param minimum  the least sum of all lines, before the discount and without tax; 0 for none
 * @param discount taken from the sum of the lines
 * @param tax      on whatever has no rate of its own
 * @param validDays for how many days from its date a quote holds; 0 for no end said
 */
public record QuoteRules(Optional<Currency> currency, BigDecimal material, BigDecimal time, BigDecimal setUp,
		List<Extra> extras, BigDecimal minimum, BigDecimal discount, BigDecimal tax, Rounding rounding, int validDays) {

	public QuoteRules {
		extras = List.copyOf(extras);
	}
}
