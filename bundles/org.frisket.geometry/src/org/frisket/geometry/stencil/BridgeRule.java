package org.frisket.geometry.stencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Where bridges stand if nobody says so: evenly round the island, in whichever position serves best. */
final class BridgeRule {

	/** A pair. */
	static final int USUAL = 2;

	/** Directions of the first bridge that are looked at, and by how much each is liked better than the next. */
	private static final int[] AXES = { 90, 0, 75, 105, 60, 120, 45, 135, 30, 150, 15, 165 };
	private static final double LIKED = 1.04;

	private BridgeRule() {
	}

	/**
	 * @param count how many bridges
	 * @param rank  0 for the best way, 1 for the next, and so on
	 */
	static List<Crossing> crossings(Opening opening, Island island, double width, int count, int rank) {
		List<List<Crossing>> ways = new ArrayList<>();
		List<Double> merits = new ArrayList<>();
		double liking = 1;
		for (int start : starts(count)) {
			List<Crossing> way = way(opening, island, width, count, start);
			if (way.size() == count && count > 0) {
				ways.add(way);
				merits.add(way.stream().mapToDouble(Crossing::merit).min().orElse(0) / liking);
			}
			liking *= LIKED;
		}
		List<Integer> order = IntStream.range(0, ways.size()).boxed()
				.sorted(Comparator.comparingDouble(i -> -merits.get(i))).toList();
		if (order.isEmpty()) {
			// one bridge is better than none
			return count > 1 ? crossings(opening, island, width, count - 1, rank) : List.of();
		}
		return ways.get(order.get(Math.min(rank, order.size() - 1)));
	}

	private static List<Crossing> way(Opening opening, Island island, double width, int count, int start) {
		List<Crossing> way = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			Crossing crossing = Crossing.along(opening, island, Math.toRadians(start + 360.0 * i / count), width);
			if (crossing != null) {
				way.add(crossing);
			}
		}
		return way;
	}

	/** One bridge may go either way along an axis; of more, the others take the other way. */
	private static int[] starts(int count) {
		return count % 2 == 0 ? AXES : IntStream.of(AXES).flatMap(axis -> IntStream.of(axis, axis + 180)).toArray();
	}
}
