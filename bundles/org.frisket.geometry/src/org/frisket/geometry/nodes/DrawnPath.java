package org.frisket.geometry.nodes;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;

/**
 * A contour while it is drawn node by node, with the handles of its ends that are of use only if it goes on or is
 * closed.
 */
public record DrawnPath(List<PathNode> nodes) {

	public static final DrawnPath EMPTY = new DrawnPath(List.of());

	private static final double EIGHTH_TURN = Math.PI / 4;

	public DrawnPath {
		nodes = List.copyOf(nodes);
	}

	public boolean isEmpty() {
		return nodes.isEmpty();
	}

	/** @throws IndexOutOfBoundsException if it is empty */
	public PathNode first() {
		return nodes.get(0);
	}

	/** @throws IndexOutOfBoundsException if it is empty */
	public PathNode last() {
		return nodes.get(nodes.size() - 1);
	}

	/** Whether there is more to close than a line there and back. */
	public boolean canClose() {
		return nodes.size() > 2 || nodes.size() == 2 && nodes.stream().anyMatch(node -> node.out() != null);
	}

	/** Goes on to a corner. */
	public DrawnPath to(Point place) {
		List<PathNode> more = new ArrayList<>(nodes);
		more.add(PathNode.corner(place));
		return new DrawnPath(more);
	}

	/**
	 * Pulls a handle out of the last node in the direction of travel, and another one of the same length backwards.
	 *
	 * @throws IndexOutOfBoundsException if it is empty
	 */
	public DrawnPath pulled(Point handle) {
		List<PathNode> changed = new ArrayList<>(nodes);
		changed.set(changed.size() - 1, PathNode.symmetric(last().place(), handle));
		return new DrawnPath(changed);
	}

	/** Without the last node; an empty path stays empty. */
	public DrawnPath withoutLast() {
		return isEmpty() ? this : new DrawnPath(nodes.subList(0, nodes.size() - 1));
	}

	/** As an open path; empty if there are not two nodes. */
	public NodePath open() {
		return nodes.size() < 2 ? NodePath.EMPTY : path(nodes, false);
	}

	/** As far as it is drawn, a single node included. */
	public NodePath soFar() {
		return isEmpty() ? NodePath.EMPTY : path(nodes, false);
	}

	/** As a closed path; empty if it cannot be closed. */
	public NodePath closed() {
		return canClose() ? path(nodes, true) : NodePath.EMPTY;
	}

	/** As a closed path that arrives at the first node with the opposite of a handle pulled out of that. */
	public NodePath closed(Point handle) {
		if (!canClose()) {
			return NodePath.EMPTY;
		}
		List<PathNode> changed = new ArrayList<>(nodes);
		PathNode first = first();
		Point in = first.place().times(2).minus(handle);
		changed.set(0, new PathNode(first.place(), in, first.out(), NodeKind.of(first.place(), in, first.out())));
		return path(changed, true);
	}

	/** As an open path that goes on to the pointer. */
	public NodePath towards(Point pointer) {
		return isEmpty() ? NodePath.EMPTY : to(pointer).open();
	}

	private static NodePath path(List<PathNode> drawn, boolean closed) {
		List<PathNode> nodes = new ArrayList<>();
		int count = drawn.size();
		for (int i = 0; i < count; i++) {
			PathNode node = drawn.get(i);
			Point before = drawn.get((i + count - 1) % count).out();
			Point after = drawn.get((i + 1) % count).in();
			boolean first = !closed && i == 0;
			boolean last = !closed && i == count - 1;
			// a curve that has a handle at one end only has one drawn in at the other
			Point in = first ? null : node.in() == null && before != null ? node.place() : node.in();
			Point out = last ? null : node.out() == null && after != null ? node.place() : node.out();
			nodes.add(new PathNode(node.place(), in, out, node.kind()));
		}
		return new NodePath(List.of(new NodeContour(nodes, closed)));
	}

	/** The place nearest to {@code to} that lies from {@code from} in a direction of whole eighths of a turn. */
	public static Point stepped(Point from, Point to) {
		Point way = to.minus(from);
		double angle = Math.rint(Math.atan2(way.y(), way.x()) / EIGHTH_TURN) * EIGHTH_TURN;
		// exactly level, upright or between
		Point direction = new Point(Math.signum(Math.rint(2 * Math.cos(angle))),
				Math.signum(Math.rint(2 * Math.sin(angle))));
		return from.plus(direction.times(way.dot(direction) / direction.dot(direction)));
	}
}
