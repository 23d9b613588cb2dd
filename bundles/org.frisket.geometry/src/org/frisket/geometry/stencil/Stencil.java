package org.frisket.geometry.stencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.RegionBoolean;

/**
 * Openings whose islands are held by bridges, so that nothing but the openings falls out of the sheet. Bridges stand
 * evenly round an island, usually two opposite each other, upright if that serves, across thick strokes rather than
 * thin ones, and straight across rather than at a slant.
 *
 * @param region  the openings, none of which has an island any more but loose ones
 * @param islands all there were, in the order of the region's pieces and their holes
 */
public record Stencil(Region region, List<HeldIsland> islands) {

	/** Bridges that are set at first, and whenever islands turn out to hold only each other, which is seldom twice. */
	private static final int ROUNDS = 6;

	public Stencil {
		islands = List.copyOf(islands);
	}

	/** All that were left standing. */
	public List<Bridge> bridges() {
		return islands.stream().flatMap(island -> island.bridges().stream()).toList();
	}

	/**
	 * @param width   of the bridges in mm, positive
	 * @param choices for islands that are not to be bridged by the rule; of several for an island the first counts
	 * @throws IllegalArgumentException if the width is not a positive length
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Stencil of(Region region, double width, List<Choice> choices, Tolerance tolerance, Monitor monitor) {
		if (!(width > 0) || !Double.isFinite(width)) {
			throw new IllegalArgumentException("a bridge needs a width, got " + width);
		}
		List<List<Island>> islands = region.pieces().stream().map(piece -> piece.holes().stream()
				.map(hole -> new Island(hole, tolerance.mm())).toList()).toList();
		Map<Island, Choice> chosen = chosen(islands.stream().flatMap(List::stream).toList(), choices);
		List<HeldIsland> held = new ArrayList<>();
		List<Piece> open = new ArrayList<>();
		for (int i = 0; i < islands.size(); i++) {
			monitor.check();
			Piece piece = region.pieces().get(i);
			if (islands.get(i).isEmpty()) {
				open.add(piece);
			} else {
				Bridging bridging = new Bridging(piece, islands.get(i), chosen, width, tolerance);
				open.addAll(bridging.region(monitor).pieces());
				held.addAll(bridging.held());
			}
		}
		// putting them together again sets their order
		Region all = held.stream().allMatch(island -> island.bridges().isEmpty()) ? region
				: new RegionBoolean().union(List.of(new Region(open)), tolerance, monitor);
		return new Stencil(all, held);
	}

	private static Map<Island, Choice> chosen(List<Island> islands, List<Choice> choices) {
		Map<Island, Choice> chosen = new HashMap<>();
		for (Choice choice : choices) {
			islands.stream().min(Comparator.comparingDouble(island -> island.distance(choice.place())))
					.ifPresent(island -> chosen.putIfAbsent(island, choice));
		}
		return chosen;
	}

	/** The work on one piece. */
	private static final class Bridging {

		private final List<Island> islands;
		private final Map<Island, Choice> choices;
		private final double width;
		private final Tolerance tolerance;
		private final Map<Island, List<Bridge>> bridges = new HashMap<>();
		private Region left;

		Bridging(Piece piece, List<Island> islands, Map<Island, Choice> choices, double width, Tolerance tolerance) {
			this.islands = islands;
			this.choices = choices;
			this.width = width;
			this.tolerance = tolerance;
			left = new Region(List.of(piece));
			islands.forEach(island -> bridges.put(island, new ArrayList<>()));
		}

		Region region(Monitor monitor) {
			for (int round = 0; round < ROUNDS; round++) {
				List<Contour> strips = new ArrayList<>();
				for (Piece part : left.pieces()) {
					Opening opening = new Opening(part, tolerance.mm());
					for (Island island : round == 0 ? islands : falling(part)) {
						for (Crossing crossing : crossings(opening, island, round)) {
							strips.add(crossing.strip(opening));
							bridges.get(round == 0 ? island : nearest(crossing.bridge().inner())).add(crossing.bridge());
						}
					}
				}
				if (strips.isEmpty()) {
					break;
				}
				// strips may overlap, which what is only taken away may
				left = new RegionBoolean().subtract(left, new Region(strips.stream()
						.map(strip -> new Piece(strip, List.of())).toList()), tolerance, monitor);
			}
			return left;
		}

		/** The islands of a part, but for those that are meant to fall out. */
		private List<Island> falling(Piece part) {
			return part.holes().stream().map(hole -> new Island(hole, tolerance.mm()))
					.filter(hole -> islands.stream().noneMatch(this::isToFall)
							|| islands.stream().anyMatch(island -> !isToFall(island) && hole.holds(island.middle())))
					.toList();
		}

		private boolean isToFall(Island island) {
			return choices.containsKey(island) && choices.get(island).isNone();
		}

		private Island nearest(Point place) {
			return islands.stream().min(Comparator.comparingDouble(island -> island.middle().distance(place)))
					.orElseThrow();
		}

		private List<Crossing> crossings(Opening opening, Island island, int round) {
			Choice choice = round == 0 ? choices.get(island) : null;
			if (choice == null) {
				return BridgeRule.crossings(opening, island, width, BridgeRule.USUAL, round);
			}
			List<Crossing> wanted = new ArrayList<>();
			for (double angle : choice.angles()) {
				Crossing crossing = Crossing.along(opening, island, angle, width);
				if (crossing != null) {
					wanted.add(crossing);
				}
			}
			return wanted.isEmpty() ? BridgeRule.crossings(opening, island, width,
					choice.angles().isEmpty() ? choice.count().orElse(BridgeRule.USUAL) : BridgeRule.USUAL, 0) : wanted;
		}

		List<HeldIsland> held() {
			List<Island> holes = left.pieces().stream().flatMap(part -> part.holes().stream())
					.map(hole -> new Island(hole, tolerance.mm())).toList();
			return islands.stream().map(island -> new HeldIsland(island.contour(), island.middle(), bridges.get(island),
					holes.stream().anyMatch(hole -> hole.holds(island.middle())))).toList();
		}
	}
}
