package org.frisket.cli;

import java.util.List;

import org.frisket.model.Layer;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.StockLimits;

/** What {@code --stock}, {@code --thinnest} and {@code --smallest} come to. */
final class Stocks {

	static final String USUAL = "card";

	private Stocks() {
	}

	/** As {@code --stock} names it. @param thinnest instead of what the stock allows; null for that, as is {@code smallest} */
	static Limits limits(String stock, Double thinnest, Double smallest) throws Refusal {
		StockLimits known = StockLimits.ofStudio();
		Limits limits = known.limits(stock).orElseThrow(() -> new Refusal(
				"--stock: there is no stock “" + stock + "”; known are " + String.join(", ", known.stocks())));
		return changed(limits, thinnest, smallest);
	}

	/** What each layer's own stock allows. */
	static LayerLimits ofLayers() {
		return LayerLimits.byStock(StockLimits.ofStudio());
	}

	/** The same. @param stock of all layers instead; null for their own */
	static LayerLimits ofLayers(String stock, Double thinnest, Double smallest) throws Refusal {
		LayerLimits own = ofLayers();
		Limits given = stock == null ? null : limits(stock, thinnest, smallest);
		if (thinnest != null || smallest != null) {
			// refused before anything is worked out
			changed(Limits.CARD, thinnest, smallest);
		}
		return new LayerLimits() {

			@Override
			public Limits of(Layer layer) {
				return given != null ? given : withOwn(own.of(layer), thinnest, smallest);
			}

			@Override
			public List<String> problems() {
				return own.problems();
			}
		};
	}

	private static Limits changed(Limits limits, Double thinnest, Double smallest) throws Refusal {
		try {
			return withOwn(limits, thinnest, smallest);
		} catch (IllegalArgumentException outOfRange) {
			throw new Refusal(outOfRange);
		}
	}

	private static Limits withOwn(Limits limits, Double thinnest, Double smallest) {
		Limits first = thinnest == null ? limits : limits.withThinnestStroke(thinnest);
		return smallest == null ? first : first.withSmallestPiece(smallest);
	}
}
