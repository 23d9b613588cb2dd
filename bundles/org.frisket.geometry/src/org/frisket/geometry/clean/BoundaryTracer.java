package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.locationtech.jts.geom.Coordinate;

/**
 * Walks along the edges that have the inside on one side only. The inside is kept on the right (y up), which is on the
 * left to a viewer whose y points down. Where courses meet in a node they are paired so that they do not cross, and
 * each is drawn back from the node by a hair.
 */
final class BoundaryTracer {

	/** Sum of angles in radians. */
	private static final double CUSPS = 0.2;

	private final Arrangement map;
	private final IntPredicate inside;
	private final double hair;
	private final boolean[] boundary;
	private final boolean[] walked;
	/** For each node where several courses meet, whether they are paired round the inside. */
	private final Boolean[] roundInside;

	BoundaryTracer(Arrangement map, IntPredicate inside, double hair) {
		this.map = map;
		this.inside = inside;
		this.hair = hair;
		int halves = 2 * map.edges.size();
		boundary = new boolean[halves];
		for (int half = 0; half < halves; half++) {
			boundary[half] = inside.test(map.right(half)) && !inside.test(map.left(half));
		}
		walked = new boolean[halves];
		roundInside = new Boolean[map.leaving.length];
	}

	/** Closed walks, each a list of visits. */
	List<List<Visit>> trace(Monitor monitor) {
		List<List<Visit>> walks = new ArrayList<>();
		for (int half = 0; half < boundary.length; half++) {
			if (boundary[half] && !walked[half]) {
				monitor.check();
				walks.add(walk(half));
			}
		}
		return walks;
	}

	private List<Visit> walk(int first) {
		List<Integer> halves = new ArrayList<>();
		int half = first;
		do {
			walked[half] = true;
			halves.add(half);
			half = next(half);
		} while (half != first);
		List<Visit> visits = new ArrayList<>(halves.size());
		int before = halves.get(halves.size() - 1);
		for (int leaving : halves) {
			Node node = map.origin(leaving);
			boolean crowded = courses(node) > 1;
			visits.add(new Visit(leaving, crowded ? drawnBack(node, before, leaving) : node.point, crowded));
			before = leaving;
		}
		return visits;
	}

	private int courses(Node node) {
		int[] star = map.leaving[node.id];
		int count = 0;
		for (int half : star) {
			count += boundary[half] ? 1 : 0;
		}
		return count;
	}

	private int next(int half) {
		int back = Arrangement.twin(half);
		Node node = map.origin(back);
		int[] star = map.leaving[node.id];
		// the inside lies on the left of the way back, so turn left to go round it
		int step = pairedRoundInside(node) ? 1 : star.length - 1;
		int at = map.rank[back];
		do {
			at = (at + step) % star.length;
		} while (!boundary[star[at]]);
		return star[at];
	}

	/**
	 * What touches in a point does not hang together, so the inside is parted; unless its sectors are mere cusps, which
	 * leave no room for courses to be drawn back into.
	 */
	private boolean pairedRoundInside(Node node) {
		if (courses(node) <= 1) {
			return true;
		}
		if (roundInside[node.id] == null) {
			double angle = 0;
			int[] star = map.leaving[node.id];
			for (int i = 0; i < star.length; i++) {
				if (inside.test(map.left(star[i]))) {
					angle += angle(node, star[i], star[(i + 1) % star.length]);
				}
			}
			roundInside[node.id] = angle >= CUSPS;
		}
		return roundInside[node.id];
	}

	private Point drawnBack(Node node, int arriving, int leaving) {
		int back = Arrangement.twin(arriving);
		double turn = pairedRoundInside(node) ? angle(node, back, leaving) : -angle(node, leaving, back);
		double direction = direction(node, back) + turn / 2;
		return node.point.plus(new Point(Math.cos(direction), Math.sin(direction)).times(hair));
	}

	/** From one half-edge counter-clockwise to the other, in (0, 2 pi]. */
	private double angle(Node node, int from, int to) {
		double angle = direction(node, to) - direction(node, from);
		return angle > 0 ? angle : angle + 2 * Math.PI;
	}

	private double direction(Node node, int half) {
		Coordinate corner = map.corner(half);
		return Math.atan2(corner.y - node.point.y(), corner.x - node.point.x());
	}
}
