package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;

/**
 * Rims all round a contour.
 *
 * @param joints of each rim with the next one, of the last with the first
 */
record Loop(List<Rim> rims, List<Joint> joints) {

	/** In mm: rims that end and start so near to each other meet, though they run across each other for that much. */
	private static final double MEETING = 1e-4;

	/** The same rims farther out, without what runs backwards there. */
	Loop moved(double distance) {
		List<Rim> forward = new ArrayList<>(rims.size());
		List<Integer> origins = new ArrayList<>(rims.size());
		for (int i = 0; i < rims.size(); i++) {
			rims.get(i).addForward(distance, forward);
			while (origins.size() < forward.size()) {
				origins.add(i);
			}
		}
		List<Joint> between = new ArrayList<>(forward.size());
		for (int i = 0; i < forward.size(); i++) {
			int next = i + 1 < forward.size() ? i + 1 : 0;
			int origin = origins.get(i);
			boolean smooth = joints.get(origin) == Joint.SMOOTH && origins.get(next) == (origin + 1) % rims.size()
					&& forward.get(i).to == rims.get(origin).to
					&& forward.get(next).from == rims.get(origins.get(next)).from;
			between.add(smooth ? Joint.SMOOTH : meet(forward.get(i), forward.get(next)) ? Joint.CORNER : Joint.OPEN);
		}
		return new Loop(forward, between);
	}

	private static boolean meet(Rim before, Rim after) {
		double[] end = new double[4];
		double[] start = new double[4];
		before.at(before.to, end);
		after.at(after.from, start);
		return Math.abs(end[0] - start[0]) < MEETING && Math.abs(end[1] - start[1]) < MEETING;
	}

	/** Of the chords, and of all that lies between them and the rims. */
	Bounds bounds() {
		Bounds sum = Bounds.EMPTY;
		for (Rim rim : rims) {
			Rim.Chords chords = rim.chords();
			sum = sum.with(new Bounds(chords.minX(), chords.minY(), chords.maxX(), chords.maxY()));
		}
		return sum;
	}
}
