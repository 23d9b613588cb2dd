package org.frisket.prepare.checks;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What stock and tool allow: a value for every {@link Limit}, in its unit. */
public record Limits(Map<Limit, Double> values) {

	/** Common practice for card, no source. */
	public static final Limits CARD = new Limits(Map.of());

	/** @throws IllegalArgumentException if a value is out of its range; limits that are not given have their usual value */
	public Limits {
		EnumMap<Limit, Double> all = new EnumMap<>(Limit.class);
		for (Limit limit : Limit.values()) {
			all.put(limit, required(limit, values.getOrDefault(limit, limit.usual())));
		}
		values = Map.copyOf(all);
	}

	private static double required(Limit limit, double value) {
		if (!(value >= limit.least() && value <= limit.most())) {
			throw new IllegalArgumentException("%s must be from %s to %s %s, got %s".formatted(limit.key(), limit.least(),
					limit.most(), limit.unit().symbol(), value));
		}
		return value;
	}

	/** In the unit of the limit. */
	public double get(Limit limit) {
		return values.get(limit);
	}

	/** @throws IllegalArgumentException if the value is out of range */
	public Limits with(Limit limit, double value) {
		Map<Limit, Double> changed = new EnumMap<>(values);
		changed.put(limit, value);
		return new Limits(changed);
	}

	/** @throws IllegalArgumentException if a value is out of range */
	public Limits with(Map<Limit, Double> others) {
		if (others.isEmpty()) {
			return this;
		}
		Map<Limit, Double> changed = new EnumMap<>(values);
		changed.putAll(others);
		return new Limits(changed);
	}

	/** The narrowest part that is to survive the blade, in mm. */
	public double thinnestStroke() {
		return get(Limit.THINNEST_STROKE);
	}

	/** The least length of a piece that can still be held and picked, in mm. */
	public double smallestPiece() {
		return get(Limit.SMALLEST_PIECE);
	}

	/** The diameter of the largest disc in the smallest hole, in mm. */
	public double smallestHole() {
		return get(Limit.SMALLEST_HOLE);
	}

	public Limits withThinnestStroke(double mm) {
		return with(Limit.THINNEST_STROKE, mm);
	}

	public Limits withSmallestPiece(double mm) {
		return with(Limit.SMALLEST_PIECE, mm);
	}

	public Limits withNarrowestGap(double mm) {
		return with(Limit.NARROWEST_GAP, mm);
	}

	public Limits withSmallestHole(double mm) {
		return with(Limit.SMALLEST_HOLE, mm);
	}

	/** The sheet they tell of; empty if not both of its sides are known. */
	public Optional<SheetSize> sheet() {
		double width = get(Limit.SHEET_WIDTH);
		double height = get(Limit.SHEET_HEIGHT);
		return width > 0 && height > 0 ? Optional.of(SheetSize.of(width, height)) : Optional.empty();
	}

	/** @param width 0 if it is not known, as {@code height} is */
	public Limits withSheet(double width, double height, double margin) {
		return with(Limit.SHEET_WIDTH, width).with(Limit.SHEET_HEIGHT, height).with(Limit.SHEET_MARGIN, margin);
	}
}
