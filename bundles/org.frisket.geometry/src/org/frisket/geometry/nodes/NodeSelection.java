package org.frisket.geometry.nodes;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;

/** The selected nodes of a path, as the path runs. */
public record NodeSelection(List<NodeAt> nodes) {

	public static final NodeSelection NONE = new NodeSelection(List.of());

	public NodeSelection {
		nodes = List.copyOf(new TreeSet<>(nodes));
	}

	public static NodeSelection of(NodeAt... nodes) {
		return new NodeSelection(List.of(nodes));
	}

	/** All nodes of a path. */
	public static NodeSelection all(NodePath path) {
		return new NodeSelection(path.nodes());
	}

	/** The nodes of a path that lie in a box. */
	public static NodeSelection within(NodePath path, Bounds box) {
		return new NodeSelection(path.nodes().stream().filter(at -> box.contains(path.node(at).place())).toList());
	}

	public boolean isEmpty() {
		return nodes.isEmpty();
	}

	public int size() {
		return nodes.size();
	}

	public boolean contains(NodeAt node) {
		return Collections.binarySearch(nodes, node) >= 0;
	}

	/** With these nodes as well. */
	public NodeSelection plus(Collection<NodeAt> others) {
		Set<NodeAt> all = new TreeSet<>(nodes);
		all.addAll(others);
		return new NodeSelection(List.copyOf(all));
	}

	/** With a node taken in, or out if it was in. */
	public NodeSelection toggled(NodeAt node) {
		return contains(node) ? new NodeSelection(nodes.stream().filter(other -> !other.equals(node)).toList())
				: plus(List.of(node));
	}

	/** The node after the last one selected, or before the first, around the ends of the path; the first if none is. */
	public NodeSelection stepped(NodePath path, boolean forward) {
		List<NodeAt> all = path.nodes();
		if (all.isEmpty()) {
			return NONE;
		}
		int from = isEmpty() ? forward ? -1 : 0 : all.indexOf(nodes.get(forward ? nodes.size() - 1 : 0));
		return of(all.get(Math.floorMod(from + (forward ? 1 : -1), all.size())));
	}

	/** The segments of a path with both ends selected. */
	public List<SegmentAt> segments(NodePath path) {
		return path.segments().stream().filter(at -> contains(at.start()) && contains(path.end(at))).toList();
	}

	/** The contours in which nodes are selected. */
	public List<Integer> contours() {
		return nodes.stream().map(NodeAt::contour).distinct().toList();
	}

	/**
	 * What stays selected when a path has become another: the same nodes if there are as many of them, otherwise those
	 * whose place still is that of a node.
	 */
	public NodeSelection kept(NodePath from, NodePath to) {
		if (from.nodes().equals(to.nodes())) {
			return this;
		}
		List<Point> places = nodes.stream().filter(from::has).map(at -> from.node(at).place()).toList();
		return new NodeSelection(
				to.nodes().stream().filter(at -> places.contains(to.node(at).place())).toList());
	}
}
