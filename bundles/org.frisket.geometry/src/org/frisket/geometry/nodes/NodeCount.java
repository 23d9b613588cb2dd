package org.frisket.geometry.nodes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.fit.CurveFitter;

/** Adds and deletes nodes. */
public final class NodeCount {

	private static final int SAMPLES_PER_SEGMENT = 64;
	private static final Tolerance FIT = new Tolerance(1e-4);
	/** How far, in mm, the halves of a divided cubic may be from it after rounding. */
	private static final double SAME = 1e-6;

	/** A path with one node more. */
	public record Inserted(NodePath path, NodeAt node) {
	}

	private NodeCount() {
	}

	/**
	 * Adds a node on a segment without changing the shape, by de Casteljau's construction. Nodes after it are counted
	 * one higher.
	 *
	 * @throws IllegalArgumentException  unless {@code t} is between 0 and 1
	 * @throws IndexOutOfBoundsException if there is no such segment
	 */
	public static Inserted insert(NodePath path, SegmentAt at, double t) {
		NodeMoves.requireInside(t);
		NodeContour contour = path.contours().get(at.contour());
		Segment segment = path.segment(at);
		PathNode added;
		if (segment instanceof Cubic cubic) {
			Point first = cubic.start().towards(cubic.control1(), t);
			Point middle = cubic.control1().towards(cubic.control2(), t);
			Point last = cubic.control2().towards(cubic.end(), t);
			Point in = first.towards(middle, t);
			Point out = middle.towards(last, t);
			added = new PathNode(in.towards(out, t), in, out, NodeKind.SMOOTH);
			contour = contour.withHandles(at.segment(), first, last);
		} else {
			added = PathNode.corner(segment.at(t));
		}
		List<PathNode> nodes = new ArrayList<>(contour.nodes());
		weaken(nodes, at.segment());
		weaken(nodes, contour.after(at.segment()));
		nodes.add(at.segment() + 1, added);
		return new Inserted(path.with(at.contour(), new NodeContour(nodes, contour.closed())),
				new NodeAt(at.contour(), at.segment() + 1));
	}

	private static void weaken(List<PathNode> nodes, int index) {
		nodes.set(index, nodes.get(index).weakened());
	}

	/**
	 * Deletes nodes. Their neighbours are joined by a line where all was straight, otherwise by the one cubic that comes
	 * nearest to the curve that was there and leaves and arrives in the same directions. An open contour is cut short
	 * where its end is deleted. A contour left with a single node goes altogether, and a closed one of which only a
	 * line there and back is left opens.
	 *
	 * @throws IndexOutOfBoundsException if one of the nodes is not there
	 */
	public static NodePath delete(NodePath path, Collection<NodeAt> nodes) {
		nodes.forEach(path::node);
		Set<NodeAt> gone = new HashSet<>(nodes);
		List<NodeContour> left = new ArrayList<>();
		for (int i = 0; i < path.contours().size(); i++) {
			NodeContour contour = path.contours().get(i);
			List<Integer> kept = new ArrayList<>();
			for (int node = 0; node < contour.nodes().size(); node++) {
				if (!gone.contains(new NodeAt(i, node))) {
					kept.add(node);
				}
			}
			if (kept.size() == contour.nodes().size()) {
				left.add(contour);
			} else if (kept.size() > 1) {
				left.add(reduced(contour, kept));
			}
		}
		return new NodePath(left);
	}

	private static NodeContour reduced(NodeContour contour, List<Integer> kept) {
		int count = kept.size();
		List<PathNode> nodes = new ArrayList<>();
		kept.forEach(index -> nodes.add(contour.nodes().get(index)));
		for (int i = 0; i < (contour.closed() ? count : count - 1); i++) {
			int next = (i + 1) % count;
			if (contour.after(kept.get(i)) != kept.get(next)) {
				bridge(contour, kept.get(i), kept.get(next), nodes, i, next);
			}
		}
		if (contour.closed()) {
			boolean thereAndBack = count == 2 && nodes.stream().allMatch(n -> n.in() == null && n.out() == null);
			return new NodeContour(nodes, !thereAndBack);
		}
		nodes.set(0, nodes.get(0).with(Side.IN, null));
		nodes.set(count - 1, nodes.get(count - 1).with(Side.OUT, null));
		return new NodeContour(nodes, false);
	}

	private static void bridge(NodeContour contour, int from, int to, List<PathNode> nodes, int start, int end) {
		List<Segment> run = new ArrayList<>();
		for (int i = from; i != to; i = contour.after(i)) {
			run.add(contour.segment(i));
		}
		Point out = null;
		Point in = null;
		if (!run.stream().allMatch(Line.class::isInstance)) {
			Cubic cubic = undivided(run).orElseGet(() -> fitted(run));
			out = NodeMoves.tidy(cubic.control1());
			in = NodeMoves.tidy(cubic.control2());
		}
		nodes.set(start, nodes.get(start).with(Side.OUT, out).weakened());
		nodes.set(end, nodes.get(end).with(Side.IN, in).weakened());
	}

	/** The cubic of which two are the parts, by de Casteljau's construction turned round; empty for any others. */
	private static Optional<Cubic> undivided(List<Segment> run) {
		if (run.size() != 2 || !(run.get(0) instanceof Cubic first) || !(run.get(1) instanceof Cubic second)) {
			return Optional.empty();
		}
		double in = first.end().distance(first.control2());
		double out = second.control1().distance(second.start());
		double t = in / (in + out);
		if (!(t > 0 && t < 1)) {
			return Optional.empty();
		}
		Cubic whole = new Cubic(first.start(), first.start().towards(first.control1(), 1 / t),
				second.end().towards(second.control2(), 1 / (1 - t)), second.end());
		for (int i = 1; i < SAMPLES_PER_SEGMENT; i++) {
			double u = (double) i / SAMPLES_PER_SEGMENT;
			if (first.at(u).distance(whole.at(u * t)) > SAME || second.at(u).distance(whole.at(t + u * (1 - t))) > SAME) {
				return Optional.empty();
			}
		}
		return Optional.of(whole);
	}

	private static Cubic fitted(List<Segment> run) {
		List<Point> points = new ArrayList<>();
		points.add(run.get(0).start());
		for (Segment segment : run) {
			for (int i = 1; i <= SAMPLES_PER_SEGMENT; i++) {
				points.add(segment.at((double) i / SAMPLES_PER_SEGMENT));
			}
		}
		return new CurveFitter(FIT).fitCubic(points, run.get(0).startTangent(),
				run.get(run.size() - 1).endTangent());
	}
}
