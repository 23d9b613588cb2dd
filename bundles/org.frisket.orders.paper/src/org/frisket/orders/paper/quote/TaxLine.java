package org.frisket.orders.paper.quote;

import java.math.BigDecimal;

/**
 * The tax of all that has one rate.
 *
 * @param rate in %
 * @param net  what it is on
 */
public record TaxLine(BigDecimal rate, BigDecimal net, BigDecimal tax) {
}
