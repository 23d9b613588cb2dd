package org.frisket.geometry.nodes;

import java.util.Collection;

import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Changes what nodes and segments are like: corner or smooth, straight or curved. */
public final class NodeShapes {

	private static final double THIRD = 1.0 / 3;

	private NodeShapes() {
	}

	/**
	 * Makes nodes corners, smooth or symmetric. A corner only frees its handles. A smooth node turns both handles into
	 * the direction between them, and lines that end there become curves; a symmetric one also gives them their mean
	 * length. Ends of open contours are corners always.
	 *
	 * @throws IndexOutOfBoundsException if one of the nodes is not there
	 */
	public static NodePath kind(NodePath path, Collection<NodeAt> nodes, NodeKind kind) {
		NodePath changed = path;
		for (NodeAt at : nodes) {
			if (kind == NodeKind.CORNER) {
				changed = changed.with(at, changed.node(at).withKind(kind));
			} else if (!path.isEnd(at)) {
				changed = smooth(changed, at, kind);
			}
		}
		return changed;
	}

	private static NodePath smooth(NodePath path, NodeAt at, NodeKind kind) {
		int count = path.contours().get(at.contour()).nodes().size();
		SegmentAt before = new SegmentAt(at.contour(), (at.node() + count - 1) % count);
		SegmentAt after = new SegmentAt(at.contour(), at.node());
		NodePath curved = curve(curve(path, before), after);
		PathNode node = curved.node(at);
		Segment arriving = curved.segment(before);
		Segment leaving = curved.segment(after);
		Point ahead = arriving.endTangent().plus(leaving.startTangent()).unit();
		if (ahead.equals(Point.ORIGIN)) {
			// the way turns straight back: go across it
			ahead = leaving.startTangent().quarterTurn();
		}
		double in = reach(node.in(), arriving, node);
		double out = reach(node.out(), leaving, node);
		if (kind == NodeKind.SYMMETRIC) {
			in = out = (in + out) / 2;
		}
		return curved.with(at, new PathNode(node.place(), NodeMoves.tidy(node.place().minus(ahead.times(in))),
				NodeMoves.tidy(node.place().plus(ahead.times(out))), kind));
	}

	private static double reach(Point handle, Segment segment, PathNode node) {
		double length = handle.distance(node.place());
		return length > 0 ? length : segment.start().distance(segment.end()) * THIRD;
	}

	/**
	 * Makes segments straight lines; the handles at their ends are dropped.
	 *
	 * @throws IndexOutOfBoundsException if one of the segments is not there
	 */
	public static NodePath lines(NodePath path, Collection<SegmentAt> segments) {
		NodePath changed = path;
		for (SegmentAt at : segments) {
			path.segment(at);
			changed = changed.with(at.contour(),
					changed.contours().get(at.contour()).withHandles(at.segment(), null, null));
		}
		return changed;
	}

	/**
	 * Makes segments curves that run as the lines did, with handles at the thirds; curves stay as they are.
	 *
	 * @throws IndexOutOfBoundsException if one of the segments is not there
	 */
	public static NodePath curves(NodePath path, Collection<SegmentAt> segments) {
		NodePath changed = path;
		for (SegmentAt at : segments) {
			changed = curve(changed, at);
		}
		return changed;
	}

	private static NodePath curve(NodePath path, SegmentAt at) {
		if (!(path.segment(at) instanceof Line line)) {
			return path;
		}
		return path.with(at.contour(), path.contours().get(at.contour()).withHandles(at.segment(),
				NodeMoves.tidy(line.at(THIRD)), NodeMoves.tidy(line.at(1 - THIRD))));
	}
}
