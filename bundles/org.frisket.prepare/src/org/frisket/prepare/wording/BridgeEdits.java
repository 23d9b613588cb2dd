package org.frisket.prepare.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.frisket.editing.wording.ChangeBridges;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.model.Wording;

/** What it means for a wording's bridges when something is done to them at a place. Places are in the wording's frame. */
public final class BridgeEdits {

	private static final double FLATTENING = 0.1;
	/** Of a cap height: no bridge is set where the letters are further apart. */
	private static final double FARTHEST = 2;

	/** What can be taken hold of: a bridge of an island, or a bridge between letters. */
	public sealed interface Held {

		/** @param number among the bridges of the island */
		record OfIsland(Bridgework.IslandAt island, int number) implements Held {
			@Override
			public Point place() {
				return island.bridges().get(number).middle();
			}
		}

		record Between(Bridgework.Span span) implements Held {
			@Override
			public Point place() {
				return span.middle();
			}
		}

		/** Where it can be taken hold of. */
		Point place();
	}

	private BridgeEdits() {
	}

	/** All that there is to take hold of. */
	public static List<Held> all(Bridgework work) {
		List<Held> all = new ArrayList<>();
		work.spans().forEach(span -> all.add(new Held.Between(span)));
		for (Bridgework.IslandAt island : work.islands()) {
			for (int i = 0; i < island.bridges().size(); i++) {
				all.add(new Held.OfIsland(island, i));
			}
		}
		return all;
	}

	/** What lies nearest to a place within a reach in mm. */
	public static Optional<Held> at(Bridgework work, Point place, double reach) {
		return all(work).stream().filter(held -> held.place().distance(place) <= reach)
				.min(Comparator.comparingDouble(held -> held.place().distance(place)));
	}

	/** Moves a bridge: one of an island to where the goal is seen from the island, one between letters as a whole. */
	public static Optional<ChangeBridges> move(Wording wording, Bridgework work, Held held, Point goal) {
		if (held instanceof Held.OfIsland of) {
			List<Double> angles = angles(of.island());
			angles.set(of.number(), of.island().angle(goal));
			return island(ChangeBridges.Change.MOVE, wording, of.island(), angles);
		}
		Bridgework.Span span = ((Held.Between) held).span();
		Point by = goal.minus(span.middle());
		return place(work, span.from().plus(by), span.to().plus(by), goal)
				.map(place -> ChangeBridges.move(wording, span.number(), place));
	}

	/** Takes a bridge away; an island that loses its last one falls out. */
	public static Optional<ChangeBridges> remove(Wording wording, Held held) {
		if (held instanceof Held.OfIsland of) {
			List<Double> angles = angles(of.island());
			angles.remove(of.number());
			return island(ChangeBridges.Change.REMOVE, wording, of.island(), angles);
		}
		return Optional.of(ChangeBridges.remove(wording, ((Held.Between) held).span().number()));
	}

	/**
	 * Adds a bridge: within an island towards the place, elsewhere between the two letters nearest to it.
	 *
	 * @param width of a bridge between letters in mm
	 */
	public static Optional<ChangeBridges> add(Wording wording, Bridgework work, Point place, double width) {
		Optional<Bridgework.IslandAt> island = work.islands().stream().filter(i -> holds(i.edge(), place)).findFirst();
		if (island.isPresent()) {
			List<Double> angles = angles(island.get());
			angles.add(island.get().angle(place));
			return island(ChangeBridges.Change.ADD, wording, island.get(), angles);
		}
		return place(work, place, place, place).map(at -> ChangeBridges.add(wording, at, width));
	}

	private static Optional<ChangeBridges> island(ChangeBridges.Change change, Wording wording,
			Bridgework.IslandAt island, List<Double> angles) {
		return island.index() < 0 ? Optional.empty()
				: Optional.of(ChangeBridges.island(change, wording, island.index(), island.number(), angles));
	}

	private static List<Double> angles(Bridgework.IslandAt island) {
		return new ArrayList<>(island.bridges().stream().map(stub -> island.angle(stub.inner().towards(stub.outer(), 0.5)))
				.toList());
	}

	private record Edge(Bridgework.LetterAt letter, Point place) {
	}

	/** Between the letters that are nearest to two places; if that is one letter, between the two nearest to the middle. */
	private static Optional<ChangeBridges.Place> place(Bridgework work, Point from, Point to, Point middle) {
		List<Edge> first = edges(work, from);
		List<Edge> second = edges(work, to);
		if (first.size() < 2) {
			return Optional.empty();
		}
		Edge one = first.get(0);
		Edge other = second.get(0);
		if (one.letter == other.letter) {
			List<Edge> nearest = edges(work, middle);
			one = nearest.get(0);
			other = nearest.get(1);
		}
		double capHeight = Math.hypot(one.letter.frame().a(), one.letter.frame().b());
		if (one.place.distance(other.place) > FARTHEST * capHeight) {
			return Optional.empty();
		}
		Point a = one.letter.frame().inverse().apply(one.place);
		Point b = other.letter.frame().inverse().apply(other.place);
		return Optional.of(new ChangeBridges.Place(one.letter.index(), a.x(), a.y(), other.letter.index(), b.x(), b.y()));
	}

	/** For each letter the point of its edge that is nearest to a place, the nearest letter first. */
	private static List<Edge> edges(Bridgework work, Point place) {
		return work.letters().stream().map(letter -> new Edge(letter, nearest(letter.outline(), place)))
				.sorted(Comparator.comparingDouble(edge -> edge.place.distance(place))).toList();
	}

	private static Point nearest(Outline outline, Point place) {
		Point best = outline.bounds().centre();
		double least = Double.POSITIVE_INFINITY;
		for (Contour contour : outline.contours()) {
			List<Point> points = contour.flattened(FLATTENING);
			for (int i = 0; i < points.size(); i++) {
				Point at = onSegment(points.get(i), points.get((i + 1) % points.size()), place);
				if (at.distance(place) < least) {
					least = at.distance(place);
					best = at;
				}
			}
		}
		return best;
	}

	private static Point onSegment(Point a, Point b, Point place) {
		Point along = b.minus(a);
		double square = along.dot(along);
		double t = square > 0 ? Math.max(0, Math.min(1, place.minus(a).dot(along) / square)) : 0;
		return a.plus(along.times(t));
	}

	private static boolean holds(Contour edge, Point place) {
		List<Point> points = edge.flattened(FLATTENING);
		boolean within = false;
		for (int i = 0, k = points.size() - 1; i < points.size(); k = i++) {
			Point a = points.get(i);
			Point b = points.get(k);
			if (a.y() > place.y() != b.y() > place.y()
					&& place.x() < (b.x() - a.x()) * (place.y() - a.y()) / (b.y() - a.y()) + a.x()) {
				within = !within;
			}
		}
		return within;
	}
}
