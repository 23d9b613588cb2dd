package org.frisket.geometry.nodes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.frisket.geometry.Point;

/** Opens, closes, breaks, joins and reverses contours. */
public final class ContourChanges {

	private ContourChanges() {
	}

	/**
	 * Breaks a path at a node, so that two ends lie there: a closed contour opens, an open one becomes two. Nothing
	 * happens at an end.
	 *
	 * @throws IndexOutOfBoundsException if there is no such node
	 */
	public static NodePath breakAt(NodePath path, NodeAt at) {
		PathNode node = path.node(at);
		NodeContour contour = path.contours().get(at.contour());
		if (contour.isEnd(at.node())) {
			return path;
		}
		if (contour.closed()) {
			List<PathNode> nodes = new ArrayList<>(contour.nodes());
			Collections.rotate(nodes, -at.node());
			nodes.set(0, node.with(Side.IN, null));
			nodes.add(node.with(Side.OUT, null));
			return path.with(at.contour(), new NodeContour(nodes, false));
		}
		List<PathNode> first = new ArrayList<>(contour.nodes().subList(0, at.node()));
		first.add(node.with(Side.OUT, null));
		List<PathNode> second = new ArrayList<>(contour.nodes().subList(at.node(), contour.nodes().size()));
		second.set(0, node.with(Side.IN, null));
		return path.with(at.contour(), new NodeContour(first, false), new NodeContour(second, false));
	}

	/**
	 * Opens a closed contour at its first node; an open one stays as it is.
	 *
	 * @throws IndexOutOfBoundsException if there is no such contour
	 */
	public static NodePath open(NodePath path, int contour) {
		return path.contours().get(contour).closed() ? breakAt(path, new NodeAt(contour, 0)) : path;
	}

	/**
	 * Closes an open contour: by a line from its last node to its first, or by making one node of both if they are no
	 * farther apart than {@code reach}. A closed contour, and one without a segment, stays as it is.
	 *
	 * @throws IndexOutOfBoundsException if there is no such contour
	 */
	public static NodePath close(NodePath path, int contour, double reach) {
		NodeContour open = path.contours().get(contour);
		if (open.closed() || open.nodes().size() < 2) {
			return path;
		}
		List<PathNode> nodes = new ArrayList<>(open.nodes());
		PathNode first = nodes.get(0);
		PathNode last = nodes.get(nodes.size() - 1);
		boolean meet = first.place().distance(last.place()) <= reach;
		if (meet && (nodes.size() > 2 || first.out() != null)) {
			nodes.remove(nodes.size() - 1);
			nodes.set(0, merged(last, nodes.size() == 1 ? first.with(Side.IN, null) : first));
		}
		return path.with(contour, new NodeContour(nodes, true));
	}

	/**
	 * Joins two ends of open contours: by a line, or by making one node of both, half-way, if they are no farther apart
	 * than {@code reach}. Both ends of one contour close it. The joined contour runs as the first one did and takes the
	 * place of the earlier.
	 *
	 * @throws IllegalArgumentException  if one of them is no end of an open contour, or both are the same
	 * @throws IndexOutOfBoundsException if one of the nodes is not there
	 */
	public static NodePath join(NodePath path, NodeAt first, NodeAt second, double reach) {
		if (!path.isEnd(first) || !path.isEnd(second) || first.equals(second)) {
			throw new IllegalArgumentException("only two ends of open contours can be joined");
		}
		if (first.contour() == second.contour()) {
			return close(path, first.contour(), reach);
		}
		NodeContour one = path.contours().get(first.contour());
		NodeContour other = path.contours().get(second.contour());
		boolean oneLeads = first.node() > 0 || one.nodes().size() == 1;
		boolean otherStarts = second.node() == 0;
		// the first contour keeps its direction; the other is turned if it must
		List<PathNode> head = oneLeads ? one.nodes() : (otherStarts ? other.reversed() : other).nodes();
		List<PathNode> tail = oneLeads ? (otherStarts ? other : other.reversed()).nodes() : one.nodes();
		List<PathNode> nodes = new ArrayList<>(head);
		PathNode end = nodes.get(nodes.size() - 1);
		if (end.place().distance(tail.get(0).place()) <= reach) {
			nodes.set(nodes.size() - 1, merged(end, tail.get(0)));
			nodes.addAll(tail.subList(1, tail.size()));
		} else {
			nodes.addAll(tail);
		}
		int earlier = Math.min(first.contour(), second.contour());
		int later = Math.max(first.contour(), second.contour());
		return path.with(later).with(earlier, new NodeContour(nodes, false));
	}

	/** One node half-way between two, with the handle into the first and the one out of the second. */
	private static PathNode merged(PathNode arriving, PathNode leaving) {
		Point place = arriving.place().equals(leaving.place()) ? leaving.place()
				: NodeMoves.tidy(arriving.place().towards(leaving.place(), 0.5));
		PathNode in = arriving.movedBy(place.minus(arriving.place()));
		PathNode out = leaving.movedBy(place.minus(leaving.place()));
		return PathNode.of(place, in.in(), out.out());
	}

	/**
	 * Lets a contour run the other way; a closed one still begins at the same node.
	 *
	 * @throws IndexOutOfBoundsException if there is no such contour
	 */
	public static NodePath reverse(NodePath path, int contour) {
		return path.with(contour, path.contours().get(contour).reversed());
	}
}
