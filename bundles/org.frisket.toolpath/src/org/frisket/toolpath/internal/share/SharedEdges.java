package org.frisket.toolpath.internal.share;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Takes away from closed lines what earlier ones work already: straight edges that lie on each other for longer than
 * twice the tolerance, and curves that are the same or each other's reverse, all to within the tolerance. The earlier
 * line keeps the edge. Of a later one open lines are left, or nothing. Nothing is measured against what was taken away
 * itself, so errors do not add up.
 */
public final class SharedEdges {

	private final List<Contour> contours;
	private final double tolerance;
	private final List<List<Stretch>> stretches = new ArrayList<>();
	/** Lines that share edges, joined: for each one that stands for its like, itself or on the way there. */
	private final int[] cluster;
	private final boolean[] changed;

	private SharedEdges(List<Contour> contours, double tolerance) {
		this.contours = contours;
		this.tolerance = tolerance;
		cluster = new int[contours.size()];
		changed = new boolean[contours.size()];
		Arrays.setAll(cluster, i -> i);
	}

	/**
	 * @param neighbours whether two lines may share edges, by their numbers
	 * @param tolerance  in mm
	 */
	public static SharedEdges of(List<Contour> contours, BiPredicate<Integer, Integer> neighbours, double tolerance,
			Monitor monitor) {
		SharedEdges shared = new SharedEdges(contours, tolerance);
		shared.take(neighbours, monitor);
		return shared;
	}

	private void take(BiPredicate<Integer, Integer> neighbours, Monitor monitor) {
		STRtree boxes = new STRtree();
		for (int i = 0; i < contours.size(); i++) {
			List<Stretch> own = new ArrayList<>();
			stretches.add(own);
			for (Segment segment : contours.get(i).segments()) {
				Stretch stretch = new Stretch(i, segment);
				own.add(stretch);
				if (contours.get(i).isClosed()) {
					boxes.insert(envelope(segment.bounds()), stretch);
				}
			}
		}
		for (int i = 0; i < contours.size(); i++) {
			monitor.check();
			if (contours.get(i).isClosed()) {
				for (Stretch stretch : stretches.get(i)) {
					giveUp(stretch, boxes, neighbours);
				}
			}
		}
	}

	private void giveUp(Stretch stretch, STRtree boxes, BiPredicate<Integer, Integer> neighbours) {
		List<Stretch> earlier = new ArrayList<>();
		boxes.query(envelope(stretch.segment.bounds().grown(tolerance)), item -> {
			Stretch other = (Stretch) item;
			if (other.line < stretch.line && neighbours.test(other.line, stretch.line)) {
				earlier.add(other);
			}
		});
		for (Stretch other : earlier) {
			if (stretch.giveUp(other, tolerance)) {
				changed[stretch.line] = true;
				cluster[find(stretch.line)] = find(other.line);
			}
		}
	}

	private int find(int line) {
		int at = line;
		while (cluster[at] != at) {
			cluster[at] = cluster[cluster[at]];
			at = cluster[at];
		}
		return at;
	}

	private static Envelope envelope(Bounds bounds) {
		return new Envelope(bounds.minX(), bounds.maxX(), bounds.minY(), bounds.maxY());
	}

	/** The line that stands for all that share edges with this one, or with what shares some with it. */
	public int cluster(int line) {
		return find(line);
	}

	/** What is left of a line. */
	public List<Contour> left(int line) {
		if (!changed[line]) {
			return List.of(contours.get(line));
		}
		List<List<Segment>> chains = new ArrayList<>();
		boolean joined = false;
		for (Stretch stretch : stretches.get(line)) {
			boolean reached = false;
			for (Stretch.Left left : stretch.left()) {
				if (!joined || left.from() > 0) {
					chains.add(new ArrayList<>());
				}
				chains.get(chains.size() - 1).add(stretch.segment.between(left.from(), left.to()));
				joined = left.to() == 1;
				reached = joined;
			}
			joined = reached;
		}
		List<Stretch.Left> first = stretches.get(line).get(0).left();
		if (joined && chains.size() > 1 && !first.isEmpty() && first.get(0).from() == 0) {
			// the last one leads over the start of the line
			chains.get(chains.size() - 1).addAll(chains.remove(0));
		}
		return chains.stream().map(Contour::open).filter(chain -> chain.length() > tolerance).toList();
	}
}
