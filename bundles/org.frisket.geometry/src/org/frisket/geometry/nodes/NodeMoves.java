package org.frisket.geometry.nodes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/**
 * Moves nodes, handles and segments. What is moved comes to lie on whole steps of 1e-9 mm, so that adding up leaves no
 * dust in the file.
 */
public final class NodeMoves {

	private static final double STEPS_PER_MM = 1e9;
	/** Nearer to an end, a curve would have to swing far to follow. */
	private static final double LEAST_BEND = 0.1;

	private NodeMoves() {
	}

	/**
	 * Moves nodes together with their handles.
	 *
	 * @throws IndexOutOfBoundsException if one of the nodes is not there
	 */
	public static NodePath nodes(NodePath path, Collection<NodeAt> nodes, Point by) {
		nodes.forEach(path::node);
		Set<NodeAt> all = new HashSet<>(nodes);
		List<NodeContour> contours = new ArrayList<>();
		for (int i = 0; i < path.contours().size(); i++) {
			List<PathNode> moved = new ArrayList<>(path.contours().get(i).nodes());
			for (int node = 0; node < moved.size(); node++) {
				if (all.contains(new NodeAt(i, node))) {
					moved.set(node, tidy(moved.get(node).movedBy(by)));
				}
			}
			contours.add(new NodeContour(moved, path.contours().get(i).closed()));
		}
		return new NodePath(contours);
	}

	/**
	 * Moves the end of a handle. At a smooth node the opposite handle turns with it, at a symmetric one it also becomes
	 * as long.
	 *
	 * @param alone whether the opposite handle stays in any case; the node is then a corner
	 * @throws IllegalArgumentException  if the node has no handle on this side
	 * @throws IndexOutOfBoundsException if there is no such node
	 */
	public static NodePath handle(NodePath path, HandleAt handle, Point to, boolean alone) {
		PathNode node = path.node(handle.node());
		if (node.handle(handle.side()) == null) {
			throw new IllegalArgumentException("there is no handle on this side of the node");
		}
		return path.with(handle.node(), alone ? node.with(handle.side(), tidy(to)).withKind(NodeKind.CORNER)
				: tidyOpposite(node.following(handle.side(), tidy(to)), handle.side()));
	}

	/**
	 * Drags a segment by a point of it. A line goes along with both its nodes. A curve bends, its nodes staying, so
	 * that its point at {@code t} comes to {@code to}, or near it where {@code t} is near an end; handles across smooth
	 * nodes follow.
	 *
	 * @throws IllegalArgumentException  unless {@code t} is between 0 and 1
	 * @throws IndexOutOfBoundsException if there is no such segment
	 */
	public static NodePath segment(NodePath path, SegmentAt at, double t, Point to) {
		requireInside(t);
		Segment segment = path.segment(at);
		Point by = to.minus(segment.at(t));
		if (!(segment instanceof Cubic cubic)) {
			return nodes(path, List.of(at.start(), path.end(at)), by);
		}
		// the smallest shift of both handles that brings the point there
		double u = Math.min(1 - LEAST_BEND, Math.max(LEAST_BEND, t));
		double first = 3 * (1 - u) * (1 - u) * u;
		double second = 3 * (1 - u) * u * u;
		Point share = by.times(1 / (first * first + second * second));
		NodePath bent = handle(path, new HandleAt(at.start(), Side.OUT), cubic.control1().plus(share.times(first)),
				false);
		return handle(bent, new HandleAt(path.end(at), Side.IN), cubic.control2().plus(share.times(second)), false);
	}

	static void requireInside(double t) {
		if (!(t > 0 && t < 1)) {
			throw new IllegalArgumentException("a parameter must be between 0 and 1, got " + t);
		}
	}

	private static PathNode tidyOpposite(PathNode node, Side moved) {
		return node.with(moved.other(), tidy(node.handle(moved.other())));
	}

	private static PathNode tidy(PathNode node) {
		return new PathNode(tidy(node.place()), tidy(node.in()), tidy(node.out()), node.kind());
	}

	/** Too large a number has no such digits to tidy. */
	static Point tidy(Point point) {
		return point == null ? null : new Point(tidy(point.x()), tidy(point.y()));
	}

	private static double tidy(double value) {
		double steps = Math.rint(value * STEPS_PER_MM);
		return Math.abs(steps) < 0x1p53 ? steps / STEPS_PER_MM : value;
	}
}
