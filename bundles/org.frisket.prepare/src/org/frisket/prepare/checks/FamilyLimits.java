package org.frisket.prepare.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Common practice, no source: a stroke of three times the caliper, but of 1 mm at least in card, down to the 0.5 mm
 * below which nothing holds together; pieces twice as long as that; a gap half as wide; holes of four times the caliper.
 */
final class FamilyLimits implements StockLimits {

	private static final double HEAVY_CARD_MM = 0.5;
	private static final double TIMES_CALIPER = 3;
	private static final double HOLE_TIMES_CALIPER = 4;

	private final Map<String, Limits> known = new LinkedHashMap<>();

	FamilyLimits() {
		known.put("card", Limits.CARD);
		known.put("heavy-card",
				limits(TIMES_CALIPER * HEAVY_CARD_MM, 0.75, HOLE_TIMES_CALIPER * HEAVY_CARD_MM).with(Limit.BLADE_OFFSET, 0.5));
		known.put("paper", limits(0.8, 0.4, 0.8));
		known.put("film", limits(0.5, 0.3, 0.5));
	}

	private static Limits limits(double stroke, double gap, double hole) {
		return Limits.CARD.withThinnestStroke(stroke).withSmallestPiece(2 * stroke).withNarrowestGap(gap)
				.withSmallestHole(hole);
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
