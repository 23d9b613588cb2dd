package org.frisket.geometry.nodes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Nodes in the order of travel; a closed contour goes on from the last one to the first. */
public record NodeContour(List<PathNode> nodes, boolean closed) {

	/**
	 * @throws IllegalArgumentException without nodes, where a segment has a handle at one end only, or where an open
	 *                                  end has a handle that leads nowhere
	 */
	public NodeContour {
		nodes = List.copyOf(nodes);
		if (nodes.isEmpty()) {
			throw new IllegalArgumentException("a contour needs a node");
		}
		if (!closed && (nodes.get(0).in() != null || nodes.get(nodes.size() - 1).out() != null)) {
			throw new IllegalArgumentException("an open end has a handle that leads nowhere");
		}
		int segments = closed ? nodes.size() : nodes.size() - 1;
		for (int i = 0; i < segments; i++) {
			if ((nodes.get(i).out() == null) != (nodes.get((i + 1) % nodes.size()).in() == null)) {
				throw new IllegalArgumentException("segment " + i + " has a handle at one end only");
			}
		}
	}

	/** @throws IllegalArgumentException if the contour is empty */
	static NodeContour of(Contour contour) {
		List<Segment> segments = contour.segments();
		List<PathNode> nodes = new ArrayList<>();
		for (int i = 0; i < segments.size(); i++) {
			int last = i > 0 ? i - 1 : segments.size() - 1;
			Segment before = i > 0 || contour.isClosed() ? segments.get(last) : null;
			nodes.add(PathNode.of(segments.get(i).start(), in(before), out(segments.get(i))));
		}
		if (!contour.isClosed() && !segments.isEmpty()) {
			nodes.add(PathNode.of(contour.end(), in(segments.get(segments.size() - 1)), null));
		}
		return new NodeContour(nodes, contour.isClosed());
	}

	private static Point in(Segment before) {
		return before instanceof Cubic cubic ? cubic.control2() : null;
	}

	private static Point out(Segment after) {
		return after instanceof Cubic cubic ? cubic.control1() : null;
	}

	public int segmentCount() {
		return closed ? nodes.size() : nodes.size() - 1;
	}

	/** The number of the node after this one, around the end of a closed contour. */
	int after(int node) {
		return (node + 1) % nodes.size();
	}

	/** Whether the segment on this side of a node is there. */
	boolean hasSegment(int node, Side side) {
		return closed || (side == Side.IN ? node > 0 : node < nodes.size() - 1);
	}

	/** Whether a node is one of the two ends of an open contour. */
	boolean isEnd(int node) {
		return !closed && (node == 0 || node == nodes.size() - 1);
	}

	/** @throws IndexOutOfBoundsException if there is no such segment */
	public Segment segment(int index) {
		if (index >= segmentCount()) {
			throw new IndexOutOfBoundsException("segment " + index + " of " + segmentCount());
		}
		PathNode start = nodes.get(index);
		PathNode end = nodes.get(after(index));
		return start.out() == null ? new Line(start.place(), end.place())
				: new Cubic(start.place(), start.out(), end.in(), end.place());
	}

	Contour contour() {
		List<Segment> segments = new ArrayList<>();
		for (int i = 0; i < segmentCount(); i++) {
			segments.add(segment(i));
		}
		return closed ? Contour.closed(segments) : Contour.open(segments);
	}

	NodeContour reversed() {
		List<PathNode> turned = new ArrayList<>();
		nodes.forEach(node -> turned.add(node.reversed()));
		Collections.reverse(turned);
		if (closed) {
			// the same node stays the first
			Collections.rotate(turned, 1);
		}
		return new NodeContour(turned, closed);
	}

	/** With the handles of one segment replaced; null makes it a line. */
	NodeContour withHandles(int segment, Point out, Point in) {
		List<PathNode> changed = new ArrayList<>(nodes);
		changed.set(segment, changed.get(segment).with(Side.OUT, out));
		changed.set(after(segment), changed.get(after(segment)).with(Side.IN, in));
		return new NodeContour(changed, closed);
	}

	NodeContour with(int node, PathNode other) {
		List<PathNode> changed = new ArrayList<>(nodes);
		changed.set(node, other);
		return new NodeContour(changed, closed);
	}
}
