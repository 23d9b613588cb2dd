package org.frisket.orders.paper.quote;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A line of a quote. Amounts are without tax.
 *
 * @param cost     what it costs the studio
 * @param markUp   in %
 * @param price    what is asked for it, before the discount
 * @param discount its share of the discount on the whole
 * @param rate     of its tax in %
 * @param tax      where each line's is rounded; empty where it is worked out of the total
 */
public record QuoteLine(CostLine.Kind kind, String name, BigDecimal cost, BigDecimal markUp, BigDecimal price,
		BigDecimal discount, BigDecimal rate, Optional<BigDecimal> tax) {

	/** What is left of the price. */
	public BigDecimal net() {
		return price.subtract(discount);
	}
}
