package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * Which spots may be the marks of a plan. Every two spots that may be two of the marks say how the sheet would lie, on its back
 * or on its face; the other marks are then looked for near to where they would be. It is random sampling (Fischler and
 * Bolles 1981; from memory) without chance: there are few enough pairs to try them all.
 */
final class LayoutSearch {

	/** Pairs of marks that are tried, the furthest apart first. */
	private static final int MOST_PAIRS = 12;
	/** How far a mark may be from where a similarity puts it, as a share of the distance of the pair: what a tilt does. */
	private static final double TILT = 0.1;
	/** Spots are bound to be as much larger as they are further apart, but for tilt, blur and ink. */
	private static final double SIZES_DIFFER = 1.45;

	private final List<Spot> shapes;
	/** For each mark the spots that it may be. */
	private final List<List<Spot>> candidates;
	private final double leastScale;
	private final double mostScale;
	private final Map<List<Spot>, Layout> layouts = new LinkedHashMap<>();

	/**
	 * Spots for marks.
	 *
	 * @param spots for each mark, null where there is none @param mirrored whether the sheet lies on its face
	 * @param error root mean square in pixels of the rough fit
	 */
	record Layout(List<Spot> spots, boolean mirrored, double error) {
		long found() {
			return spots.stream().filter(spot -> spot != null).count();
		}
	}

	/** @param shapes of the marks as designed @param leastScale pixels to a mm */
	LayoutSearch(List<Spot> shapes, List<List<Spot>> candidates, double leastScale, double mostScale) {
		this.shapes = shapes;
		this.candidates = candidates;
		this.leastScale = leastScale;
		this.mostScale = mostScale;
	}

	/** The likeliest first: most marks, then least error. */
	List<Layout> find(Monitor monitor) {
		for (int[] pair : pairs()) {
			for (Spot one : candidates.get(pair[0])) {
				monitor.check();
				for (Spot other : candidates.get(pair[1])) {
					if (one != other) {
						lay(pair[0], pair[1], one, other, false);
						lay(pair[0], pair[1], one, other, true);
					}
				}
			}
		}
		return layouts.values().stream().sorted(Comparator.comparing(Layout::found).reversed()
				.thenComparing(Layout::error).thenComparing(Layout::mirrored)).toList();
	}

	private List<int[]> pairs() {
		List<int[]> pairs = new ArrayList<>();
		for (int i = 0; i < shapes.size(); i++) {
			for (int j = i + 1; j < shapes.size(); j++) {
				pairs.add(new int[] { i, j });
			}
		}
		pairs.sort(Comparator.comparingDouble(pair -> -centre(pair[0]).distance(centre(pair[1]))));
		return pairs.subList(0, Math.min(MOST_PAIRS, pairs.size()));
	}

	private Point centre(int mark) {
		return shapes.get(mark).centre();
	}

	private void lay(int a, int b, Spot one, Spot other, boolean mirrored) {
		double distance = one.centre().distance(other.centre());
		double scale = distance / centre(a).distance(centre(b));
		if (scale < leastScale || scale > mostScale || !isSize(a, one, scale) || !isSize(b, other, scale)) {
			return;
		}
		Transform map = map(a, b, one, other, mirrored);
		Spot[] spots = new Spot[shapes.size()];
		spots[a] = one;
		spots[b] = other;
		double squares = 0;
		int found = 2;
		for (int mark = 0; mark < spots.length; mark++) {
			if (mark == a || mark == b) {
				continue;
			}
			Point expected = map.apply(centre(mark));
			double nearest = TILT * distance;
			for (Spot spot : candidates.get(mark)) {
				double off = spot.centre().distance(expected);
				if (off < nearest && isSize(mark, spot, scale) && Arrays.stream(spots).noneMatch(s -> s == spot)) {
					nearest = off;
					spots[mark] = spot;
				}
			}
			if (spots[mark] != null) {
				squares += nearest * nearest;
				found++;
			}
		}
		Layout layout = new Layout(Arrays.asList(spots), mirrored, Math.sqrt(squares / found));
		layouts.merge(Arrays.asList(spots), layout, (x, y) -> x.error() <= y.error() ? x : y);
	}

	private boolean isSize(int mark, Spot spot, double scale) {
		double ratio = spot.size() / (shapes.get(mark).size() * scale);
		return ratio < SIZES_DIFFER && ratio > 1 / SIZES_DIFFER;
	}

	private Transform map(int a, int b, Spot one, Spot other, boolean mirrored) {
		Point from = centre(b).minus(centre(a));
		from = mirrored ? new Point(-from.x(), from.y()) : from;
		Point to = other.centre().minus(one.centre());
		double square = from.dot(from);
		double cos = from.dot(to) / square;
		double sin = from.cross(to) / square;
		Transform turn = Transform.scaling(mirrored ? -1 : 1, 1).then(new Transform(cos, sin, -sin, cos, 0, 0));
		Point place = one.centre().minus(turn.apply(centre(a)));
		return turn.then(Transform.translation(place.x(), place.y()));
	}
}
