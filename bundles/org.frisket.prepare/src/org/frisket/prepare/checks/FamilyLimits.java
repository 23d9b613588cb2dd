package org.frisket.prepare.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Common practice, no source: a stroke of three times the caliper, but of 1 mm at least in card, down to the 0.5 mm
 * below which nothing holds together; pieces twice as long as that.
 */
final class FamilyLimits implements StockLimits {

	private static final double HEAVY_CARD_MM = 0.5;
	private static final double TIMES_CALIPER = 3;

	private final Map<String, Limits> known = new LinkedHashMap<>();

	FamilyLimits() {
		double heavy = TIMES_CALIPER * HEAVY_CARD_MM;
		known.put("card", Limits.CARD);
		known.put("heavy-card", new Limits(heavy, 2 * heavy));
		known.put("paper", new Limits(0.8, 1.6));
		known.put("film", new Limits(0.5, 1));
	}

	@Override
	public Optional<Limits> limits(String stock) {
		return Optional.ofNullable(known.get(stock));
	}

	@Override
	public List<String> stocks() {
		return List.copyOf(known.keySet());
	}
}
