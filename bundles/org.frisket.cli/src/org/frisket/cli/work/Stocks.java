package org.frisket.cli.work;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

import org.frisket.cli.line.Refusal;
import org.frisket.model.Layer;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.SheetSize;
import org.frisket.prepare.checks.StockLimits;

/** What {@code --stock}, {@code --thinnest} and {@code --smallest} come to. */
public final class Stocks {

	public static final String USUAL = "card";
	/** A verb runs once, so that it waits for a store in use as long as any other does. */
	private static final Duration PATIENCE = Duration.ofSeconds(5);
	/** A shelf may hold thousands. */
	private static final int NAMED = 20;

	private Stocks() {
	}

	public static StockLimits known() {
		return StockLimits.ofStudio(PATIENCE);
	}

	/** As {@code --stock} names it. @param thinnest instead of what the stock allows; null for that, as is {@code smallest} */
	public static Limits limits(String stock, Double thinnest, Double smallest) throws Refusal {
		return changed(limits(known(), stock), thinnest, smallest);
	}

	private static Limits limits(StockLimits known, String stock) throws Refusal {
		Optional<Limits> limits = known.limits(stock);
		if (limits.isPresent()) {
			return limits.get();
		}
		List<String> stocks = known.stocks();
		throw new Refusal("--stock: there is no stock “" + stock + "”; known are "
				+ String.join(", ", stocks.subList(0, Math.min(NAMED, stocks.size())))
				+ (stocks.size() > NAMED ? " and " + (stocks.size() - NAMED) + " more, see frisket stock list" : "")
				+ known.problems().stream().map(problem -> ". " + problem).findFirst().orElse(""));
	}

	/** What each layer's own stock allows. */
	public static LayerLimits ofLayers() {
		return LayerLimits.byStock(known());
	}

	/** The same. @param stock of all layers instead; null for their own */
	public static LayerLimits ofLayers(String stock, Double thinnest, Double smallest) throws Refusal {
		StockLimits known = known();
		LayerLimits own = LayerLimits.byStock(known);
		Limits given = stock == null ? null : changed(limits(known, stock), thinnest, smallest);
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
			public List<SheetSize> sheets(Layer layer) {
				return given != null ? known.sheets(stock) : own.sheets(layer);
			}

			@Override
			public boolean knows(String id) {
				return given != null || own.knows(id);
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
