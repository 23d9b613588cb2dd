package org.frisket.cli;

import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.StockLimits;

/** What {@code --stock}, {@code --thinnest} and {@code --smallest} come to. */
final class Stocks {

	static final String USUAL = "card";

	private Stocks() {
	}

	/** @param thinnest instead of what the stock allows; null for that of the stock, as is {@code smallest} */
	static Limits limits(String stock, Double thinnest, Double smallest) throws Refusal {
		Limits limits = StockLimits.BUILT_IN.limits(stock).orElseThrow(() -> new Refusal("--stock: there is no stock “"
				+ stock + "”; known are " + String.join(", ", StockLimits.BUILT_IN.stocks())));
		limits = thinnest == null ? limits : limits.withThinnestStroke(thinnest);
		return smallest == null ? limits : limits.withSmallestPiece(smallest);
	}
}
