package org.frisket.prepare.checks;

import java.util.List;
import java.util.Optional;

import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/** What the layers of a job allow, each by its own stock. */
public interface LayerLimits {

	/** @param layer null for what lies on none */
	Limits of(Layer layer);

	/** Those of the layer that an element lies on. */
	default Limits of(Element element) {
		return of(Jobs.layerOf(element));
	}

	/** The sizes of the sheets of a layer; empty if they are not known. @param layer null for what lies on none */
	default List<SheetSize> sheets(Layer layer) {
		return of(layer).sheet().stream().toList();
	}

	/** Whether anything is known of a stock. */
	default boolean knows(String stock) {
		return true;
	}

	/** What is wrong with what the studio says of its stocks, one sentence each. */
	default List<String> problems() {
		return List.of();
	}

	/** The same whatever a layer is made from. */
	static LayerLimits same(Limits limits) {
		return layer -> limits;
	}

	/** Those of a layer's stock, or of the usual one where none is chosen or it is not known. */
	static LayerLimits byStock(StockLimits stocks) {
		Limits usual = stocks.limits(stocks.stocks().get(0)).orElse(Limits.CARD);
		return new LayerLimits() {

			@Override
			public Limits of(Layer layer) {
				return Optional.ofNullable(layer).map(Layer::getStock).flatMap(stocks::limits).orElse(usual);
			}

			@Override
			public List<SheetSize> sheets(Layer layer) {
				return Optional.ofNullable(layer).map(Layer::getStock).filter(this::knows).map(stocks::sheets)
						.orElseGet(() -> usual.sheet().stream().toList());
			}

			@Override
			public boolean knows(String stock) {
				return stocks.limits(stock).isPresent();
			}

			@Override
			public List<String> problems() {
				return stocks.problems();
			}
		};
	}
}
