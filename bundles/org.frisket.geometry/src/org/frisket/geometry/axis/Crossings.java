package org.frisket.geometry.axis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Point;

/** Forks and turns of an axis, those taken together that stand where one pair of strokes crosses or one turns. */
final class Crossings {

	private final Map<Integer, Integer> leaders = new HashMap<>();
	private final Map<Integer, AxisPoint> largest = new HashMap<>();

	private Crossings() {
	}

	/** @param overlap forks are one crossing if the stroke between is shorter than this many radii of the larger disc */
	static Crossings of(List<Stroke> strokes, double overlap) {
		Crossings crossings = new Crossings();
		Degrees degrees = Degrees.of(strokes);
		for (Stroke stroke : strokes) {
			crossings.add(stroke.from(), stroke.first(), degrees);
			crossings.add(stroke.to(), stroke.last(), degrees);
		}
		for (Stroke stroke : strokes) {
			double reach = overlap * Math.max(stroke.first().radius(), stroke.last().radius());
			if (crossings.isCrossing(stroke.from()) && crossings.isCrossing(stroke.to())
					&& stroke.from() != stroke.to() && stroke.length() < reach) {
				crossings.unite(crossings.of(stroke.from()), crossings.of(stroke.to()));
			}
		}
		return crossings;
	}

	private void add(int node, AxisPoint point, Degrees degrees) {
		if (degrees.of(node) > 2 || Parting.isParting(node)) {
			leaders.put(node, node);
			largest.put(node, point);
		}
	}

	private void unite(int one, int other) {
		if (one != other) {
			int first = Math.min(one, other);
			int second = Math.max(one, other);
			leaders.put(second, first);
			if (largest.get(second).radius() > largest.get(first).radius()) {
				largest.put(first, largest.get(second));
			}
		}
	}

	boolean isCrossing(int node) {
		return leaders.containsKey(node);
	}

	/** The crossing that a fork belongs to. */
	int of(int node) {
		int leader = leaders.get(node);
		return leader == node ? node : of(leader);
	}

	/** Whether a stroke lies wholly within one crossing, and is no ring. */
	boolean isWithin(Stroke stroke) {
		return isCrossing(stroke.from()) && isCrossing(stroke.to()) && of(stroke.from()) == of(stroke.to())
				&& stroke.length() < 2 * radius(of(stroke.from()));
	}

	Point centre(int crossing) {
		return largest.get(crossing).place();
	}

	double radius(int crossing) {
		return largest.get(crossing).radius();
	}
}
