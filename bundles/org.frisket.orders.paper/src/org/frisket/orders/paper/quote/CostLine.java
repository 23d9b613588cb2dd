package org.frisket.orders.paper.quote;

import java.math.BigDecimal;

/**
 * What something costs the studio.
 *
 * @param cost without tax, in the decimals of its currency
 * @param tax  rate in %
 */
public record CostLine(Kind kind, String name, BigDecimal cost, BigDecimal tax) {

	/** What a line is for. */
	public enum Kind {
		MATERIAL, TIME, EXTRA,
		/** What the others lack of the least that is asked for a job. */
		MINIMUM
	}
}
