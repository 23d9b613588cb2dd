package org.frisket.geometry.fit;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;

/**
 * Takes edges out of a ring that are too short to mean anything: steps and cut-off tips that polygon operations leave
 * where nearly equal edges meet. The neighbours go on to where they meet, if that is near; else to the middle.
 */
final class StepMending {

	private final double shortest;

	StepMending(double shortest) {
		this.shortest = shortest;
	}

	List<Point> mended(List<Point> ring) {
		List<Point> kept = new ArrayList<>(ring.size());
		int size = ring.size();
		for (int i = 0; i < size; i++) {
			Point point = ring.get(i);
			int last = kept.size() - 1;
			if (last >= 0 && kept.get(last).distance(point) < shortest) {
				Point before = last > 0 ? kept.get(last - 1) : ring.get(size - 1);
				kept.set(last, meeting(before, kept.get(last), point, ring.get((i + 1) % size)));
			} else {
				kept.add(point);
			}
		}
		int last = kept.size() - 1;
		if (last > 2 && kept.get(last).distance(kept.get(0)) < shortest) {
			kept.set(0, meeting(kept.get(last - 1), kept.get(last), kept.get(0), kept.get(1)));
			kept.remove(last);
		}
		return kept;
	}

	private Point meeting(Point before, Point start, Point end, Point after) {
		return meeting(start, start.minus(before), end, after.minus(end), shortest);
	}

	/**
	 * Where two lines meet, or the middle between their points if that is farther off than {@code reach}.
	 *
	 * @param start a point of the first line, which runs in the direction {@code arriving}
	 * @param end a point of the second line, which runs in the direction {@code leaving}
	 */
	static Point meeting(Point start, Point arriving, Point end, Point leaving, double reach) {
		Point middle = start.towards(end, 0.5);
		double sine = arriving.cross(leaving);
		Point meeting = start.plus(arriving.times(end.minus(start).cross(leaving) / sine));
		return meeting.distance(middle) <= reach ? meeting : middle;
	}
}
