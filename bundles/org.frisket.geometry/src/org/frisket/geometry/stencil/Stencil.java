package org.frisket.geometry.stencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.RegionBoolean;

/**
 * Openings whose islands are held by bridges, so that nothing but the openings falls out of the sheet. Bridges stand
 * opposite each other, upright if that serves, across thick strokes rather than thin ones, and straight across rather
 * than at a slant.
 *
 * @param region  the openings, none of which has an island any more
 * @param bridges what was left standing
 */
public record Stencil(Region region, List<Bridge> bridges) {

	/** Axes that are looked at, upright ones first, and by how much each is liked better than the next. */
	private static final int[] AXES = { 90, 0, 75, 105, 60, 120, 45, 135, 30, 150, 15, 165 };
	private static final double LIKED = 1.04;
	private static final int ROUNDS = 3;

	public Stencil {
		bridges = List.copyOf(bridges);
	}

	/**
	 * @param width   of the bridges in mm, positive
	 * @param choices for islands that are not to be bridged by the rule
	 * @throws IllegalArgumentException if the width is not a positive length
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Stencil of(Region region, double width, List<Choice> choices, Tolerance tolerance, Monitor monitor) {
		if (!(width > 0) || !Double.isFinite(width)) {
			throw new IllegalArgumentException("a bridge needs a width, got " + width);
		}
		List<Bridge> bridges = new ArrayList<>();
		List<Piece> open = new ArrayList<>();
		for (Piece piece : region.pieces()) {
			monitor.check();
			if (piece.holes().isEmpty()) {
				open.add(piece);
			} else {
				Stencil bridged = bridged(piece, width, choices, tolerance, monitor);
				open.addAll(bridged.region().pieces());
				bridges.addAll(bridged.bridges());
			}
		}
		// putting them together again sets their order
		Region all = bridges.isEmpty() ? region : new RegionBoolean().union(List.of(new Region(open)), tolerance, monitor);
		return new Stencil(all, bridges);
	}

	private static Stencil bridged(Piece piece, double width, List<Choice> choices, Tolerance tolerance,
			Monitor monitor) {
		List<Bridge> bridges = new ArrayList<>();
		Region left = new Region(List.of(piece));
		for (int round = 0; round < ROUNDS && hasIslands(left); round++) {
			List<Contour> strips = new ArrayList<>();
			for (Piece part : left.pieces()) {
				Opening opening = new Opening(part, tolerance.mm());
				for (Contour hole : part.holes()) {
					Island island = new Island(hole, tolerance.mm());
					List<Crossing> chosen = round == 0 ? chosen(opening, island, part, choices, width) : List.of();
					for (Crossing crossing : chosen.isEmpty() ? byRule(opening, island, width, round) : chosen) {
						bridges.add(crossing.bridge());
						strips.add(crossing.bridge().strip(Math.min(width, crossing.before() / 2),
								Math.min(width, crossing.after() / 2)));
					}
				}
			}
			// strips may overlap, which what is only taken away may
			left = new RegionBoolean().subtract(left, new Region(strips.stream()
					.map(strip -> new Piece(strip, List.of())).toList()), tolerance, monitor);
		}
		return new Stencil(left, bridges);
	}

	private static boolean hasIslands(Region region) {
		return region.pieces().stream().anyMatch(piece -> !piece.holes().isEmpty());
	}

	private static List<Crossing> chosen(Opening opening, Island island, Piece part, List<Choice> choices,
			double width) {
		Optional<Choice> choice = choices.stream()
				.filter(c -> part.holes().stream().map(hole -> new Island(hole, width / 8).middle())
						.min(Comparator.comparingDouble((Point middle) -> middle.distance(c.place()))).orElseThrow()
						.distance(island.middle()) < width / 2)
				.findFirst();
		List<Crossing> crossings = new ArrayList<>();
		choice.ifPresent(c -> c.angles().forEach(angle -> {
			Crossing crossing = Crossing.along(opening, island, angle, width);
			if (crossing != null) {
				crossings.add(crossing);
			}
		}));
		return crossings;
	}

	/** A pair along the best axis; in later rounds, for islands that only hold each other, along the next best. */
	private static List<Crossing> byRule(Opening opening, Island island, double width, int round) {
		List<List<Crossing>> pairs = new ArrayList<>();
		List<Double> merits = new ArrayList<>();
		double liking = 1;
		for (int axis : AXES) {
			double angle = Math.toRadians(axis);
			Crossing one = Crossing.along(opening, island, angle, width);
			Crossing other = Crossing.along(opening, island, angle + Math.PI, width);
			if (one != null && other != null) {
				pairs.add(List.of(one, other));
				merits.add(Math.min(one.merit(), other.merit()) / liking);
			}
			liking *= LIKED;
		}
		List<Integer> order = new ArrayList<>();
		for (int i = 0; i < pairs.size(); i++) {
			order.add(i);
		}
		order.sort(Comparator.comparingDouble(i -> -merits.get(i)));
		return order.isEmpty() ? List.of() : pairs.get(order.get(Math.min(round, order.size() - 1)));
	}
}
