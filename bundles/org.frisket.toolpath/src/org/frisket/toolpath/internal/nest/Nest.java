package org.frisket.toolpath.internal.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Which closed line lies directly around which line, closed or open. A line lies within another if no place of it is
 * outside, where places within a tolerance of the other are neither: so lines that touch or share edges are told apart.
 * Of two that cross, neither lies within the other.
 */
public final class Nest {

	/** Places of a line that are looked at, about. */
	private static final int PLACES = 48;
	/** Of two lines whose areas differ by less neither is the inner one. */
	private static final double ALIKE = 1e-9;

	private final List<Contour> contours;
	private final double tolerance;
	private final double[] area;
	private final Loop[] loops;
	/** By its area; closed lines only. */
	private final int[] rank;
	private final Integer[] byRank;
	private final STRtree boxes = new STRtree();

	private Nest(List<Contour> contours, double tolerance) {
		this.contours = contours;
		this.tolerance = tolerance;
		area = new double[contours.size()];
		loops = new Loop[contours.size()];
		rank = new int[contours.size()];
		List<Integer> closed = new ArrayList<>();
		for (int i = 0; i < contours.size(); i++) {
			if (contours.get(i).isClosed()) {
				area[i] = Math.abs(contours.get(i).signedArea());
				closed.add(i);
			}
		}
		closed.sort(Comparator.<Integer>comparingDouble(i -> area[i]).thenComparing(Comparator.naturalOrder()));
		byRank = closed.toArray(Integer[]::new);
		Arrays.fill(rank, -1);
		for (int k = 0; k < byRank.length; k++) {
			rank[byRank[k]] = k;
			boxes.insert(envelope(contours.get(byRank[k]).bounds().grown(tolerance)), k);
		}
	}

	/**
	 * @param tolerance in mm
	 * @return for each line the number of the smallest closed one around it, or -1
	 */
	public static int[] parents(List<Contour> contours, double tolerance, Monitor monitor) {
		Nest nest = new Nest(contours, tolerance);
		int[] parents = new int[contours.size()];
		for (int i = 0; i < parents.length; i++) {
			monitor.check();
			parents[i] = nest.parent(i);
		}
		return parents;
	}

	private int parent(int line) {
		Bounds box = contours.get(line).bounds();
		Envelope own = envelope(box);
		List<Point> places = null;
		for (int last = rank[line];;) {
			int[] next = { Integer.MAX_VALUE };
			int after = last;
			boxes.query(own, item -> {
				int k = (Integer) item;
				if (k > after && k < next[0] && isWithin(box, contours.get(byRank[k]).bounds().grown(tolerance))) {
					next[0] = k;
				}
			});
			if (next[0] == Integer.MAX_VALUE) {
				return -1;
			}
			int other = byRank[next[0]];
			if (places == null) {
				places = places(contours.get(line));
			}
			if (area[line] < area[other] * (1 - ALIKE) && lies(line, places, other)) {
				return other;
			}
			last = next[0];
		}
	}

	private boolean lies(int line, List<Point> places, int other) {
		Loop around = loop(other);
		boolean within = false;
		for (Point place : places) {
			if (around.windings(place) != 0) {
				within = within || !around.isNear(place, tolerance);
			} else if (!around.isNear(place, tolerance)) {
				return false;
			}
		}
		// one that runs along the other all the way
		return within || contours.get(line).isClosed() && around.windings(loop(line).inside()) != 0;
	}

	private Loop loop(int line) {
		if (loops[line] == null) {
			loops[line] = new Loop(contours.get(line), tolerance / 2);
		}
		return loops[line];
	}

	/** Its corners, or some of them, and places between. */
	private List<Point> places(Contour contour) {
		List<Point> points = contour.flattened(tolerance / 2);
		List<Point> places = new ArrayList<>();
		int step = Math.max(1, 2 * points.size() / PLACES);
		for (int i = 0; i < points.size(); i += step) {
			places.add(points.get(i));
			if (i + 1 < points.size() || contour.isClosed()) {
				places.add(points.get(i).towards(points.get((i + 1) % points.size()), 0.5));
			}
		}
		places.add(points.get(points.size() - 1));
		return places;
	}

	private static boolean isWithin(Bounds box, Bounds around) {
		return box.minX() >= around.minX() && box.maxX() <= around.maxX() && box.minY() >= around.minY()
				&& box.maxY() <= around.maxY();
	}

	private static Envelope envelope(Bounds bounds) {
		return new Envelope(bounds.minX(), bounds.maxX(), bounds.minY(), bounds.maxY());
	}
}
