package org.frisket.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.material.Stock;
import org.frisket.material.catalogue.StockCatalogue;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.extension.ExtensionPoint;

/** The catalogues of stock at hand, built in or brought by a studio's own bundle. */
public final class StockCatalogues {

	private static final ExtensionPoint<StockCatalogue> POINT = new ExtensionPoint<>(
			"org.frisket.material.stockCatalogues", StockCatalogue.class);

	/** Where a stock is from. @param catalogue its name, for people */
	public record Entry(Stock stock, String catalogue, String bundle) {
	}

	private final List<Entry> entries = new ArrayList<>();
	private final List<String> failures = new ArrayList<>();

	private StockCatalogues() {
	}

	/** Looks into all of them; one that fails is left out, and told. */
	public static StockCatalogues open() {
		StockCatalogues catalogues = new StockCatalogues();
		POINT.contributions().forEach(catalogues::add);
		return catalogues;
	}

	private void add(Contribution<StockCatalogue> catalogue) {
		try {
			String name = catalogue.attribute("name").orElse(catalogue.id());
			entries.addAll(stocks(catalogue).stream().map(stock -> new Entry(stock, name, catalogue.bundle())).toList());
		} catch (ContributionException e) {
			failures.add(e.getMessage());
		}
	}

	private static List<Stock> stocks(Contribution<StockCatalogue> catalogue) throws ContributionException {
		StockCatalogue created = catalogue.create();
		try {
			// a list of the catalogue's own could fail later
			return List.copyOf(created.stocks());
		} catch (RuntimeException | LinkageError e) {
			throw catalogue.failed(e);
		}
	}

	/** All stock, catalogue after catalogue. */
	public List<Entry> entries() {
		return entries;
	}

	/** The first with this id. */
	public Optional<Stock> find(String id) {
		return entries.stream().map(Entry::stock).filter(stock -> stock.id().equals(id)).findFirst();
	}

	/** What went wrong, each with its bundle's name. */
	public List<String> failures() {
		return failures;
	}
}
