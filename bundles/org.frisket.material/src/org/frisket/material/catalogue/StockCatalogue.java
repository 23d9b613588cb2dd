package org.frisket.material.catalogue;

import java.util.List;

import org.frisket.material.Stock;

/**
 * A list of stock to choose from, contributed to {@code org.frisket.material.stockCatalogues}. It has a constructor
 * without arguments.
 */
public interface StockCatalogue {

	/** All of it, the same at every call, no two with the same id. Nothing is on hand. */
	List<Stock> stocks();
}
