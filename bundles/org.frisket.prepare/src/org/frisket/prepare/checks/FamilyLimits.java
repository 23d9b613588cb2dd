package org.frisket.prepare.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.material.StockFamily;

/**
 * Common practice, no source: a stroke of three times the caliper, but of 1 mm at least in card, down to the 0.5 mm
 * below which nothing holds together; pieces twice as long as that; a gap half as wide; holes of four times the caliper,
 * from 0.5 to 2 mm.
 */
final class FamilyLimits implements StockLimits {

	private static final double HEAVY_CARD_MM = 0.5;
	private static final double HEAVY_CARD_BLADE_OFFSET = 0.5;
	private static final double TIMES_CALIPER = 3;
	private static final double LEAST_CARD_STROKE = 1;
	private static final double LEAST_STROKE = 0.5;
	private static final double HOLE_TIMES_CALIPER = 4;
	private static final double LEAST_HOLE = 0.5;
	private static final double LARGEST_HOLE = 2;

	private final Map<String, Limits> known = new LinkedHashMap<>();

	FamilyLimits() {
		known.put("card", Limits.CARD);
		known.put("heavy-card", ofCaliper(StockFamily.CARD, HEAVY_CARD_MM));
		known.put("paper", limits(0.8, 0.4, 0.8));
		known.put("film", limits(0.5, 0.3, 0.5));
	}

	/** Those of a stock whose caliper is known. @param mm its caliper */
	static Limits ofCaliper(StockFamily family, double mm) {
		double stroke = Math.max(family == StockFamily.CARD ? LEAST_CARD_STROKE : LEAST_STROKE, tidy(TIMES_CALIPER * mm));
		Limits limits = limits(stroke, stroke / 2,
				Math.max(LEAST_HOLE, Math.min(LARGEST_HOLE, tidy(HOLE_TIMES_CALIPER * mm))));
		return family == StockFamily.CARD && mm >= HEAVY_CARD_MM
				? limits.with(Limit.BLADE_OFFSET, HEAVY_CARD_BLADE_OFFSET)
				: limits;
	}

	/** Without the digits that only multiplying leaves. */
	private static double tidy(double mm) {
		return Math.rint(mm * 1e6) / 1e6;
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
