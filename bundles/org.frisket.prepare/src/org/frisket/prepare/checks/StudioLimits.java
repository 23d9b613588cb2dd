package org.frisket.prepare.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** What the studio's file says, over what its shelf says, over what is built in. Safe for use by several threads. */
final class StudioLimits implements StockLimits {

	private final LimitsFile file;
	private final ShelfLimits shelf;
	private final List<String> stocks;
	private final List<String> problems = new ArrayList<>();
	/** Asked for at every element. */
	private final Map<String, Optional<Limits>> known = new ConcurrentHashMap<>();

	StudioLimits(LimitsFile file, ShelfLimits shelf) {
		this.file = file;
		this.shelf = shelf;
		Set<String> all = new LinkedHashSet<>(BUILT_IN.stocks());
		all.addAll(shelf.stocks());
		all.addAll(file.stocks());
		stocks = List.copyOf(all);
		problems.addAll(file.problems());
		problems.addAll(shelf.problems());
	}

	ShelfLimits shelf() {
		return shelf;
	}

	@Override
	public Optional<Limits> limits(String stock) {
		return known.computeIfAbsent(stock, this::find);
	}

	private Optional<Limits> find(String stock) {
		Optional<Limits> begun = shelf.limits(stock).or(() -> BUILT_IN.limits(stock));
		Map<Limit, Double> own = file.of(stock);
		if (begun.isEmpty() && own.isEmpty()) {
			return Optional.empty();
		}
		return Optional.of(begun.orElse(Limits.CARD).with(file.ofAll()).with(own));
	}

	@Override
	public List<String> stocks() {
		return stocks;
	}

	@Override
	public List<SheetSize> sheets(String stock) {
		List<SheetSize> written = StockLimits.super.sheets(stock);
		return written.isEmpty() ? shelf.sheets(stock) : written;
	}

	@Override
	public Optional<String> basis(String stock) {
		return file.of(stock).isEmpty() ? shelf.basis(stock) : Optional.empty();
	}

	@Override
	public List<String> problems() {
		return List.copyOf(problems);
	}
}
