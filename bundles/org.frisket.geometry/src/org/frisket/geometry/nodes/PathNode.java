package org.frisket.geometry.nodes;

import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * A node of a path. A handle that lies on the node's own place is one that is drawn in; the segment is a cubic still.
 *
 * @param in  end of the handle towards the node before; null if the segment there is a line or missing
 * @param out end of the handle towards the node after; null if the segment there is a line or missing
 * @param kind a node without both handles is always a corner
 */
public record PathNode(Point place, Point in, Point out, NodeKind kind) {

	public PathNode {
		kind = in == null || out == null ? NodeKind.CORNER : kind;
	}

	/** A node between lines. */
	public static PathNode corner(Point place) {
		return new PathNode(place, null, null, NodeKind.CORNER);
	}

	/** A node with handles of one length on one line. */
	public static PathNode symmetric(Point place, Point out) {
		return new PathNode(place, place.times(2).minus(out), out, NodeKind.SYMMETRIC);
	}

	/** With the kind that the handles look like. */
	static PathNode of(Point place, Point in, Point out) {
		return new PathNode(place, in, out, NodeKind.of(place, in, out));
	}

	/** The end of a handle; null if there is none. */
	public Point handle(Side side) {
		return side == Side.IN ? in : out;
	}

	public PathNode withKind(NodeKind newKind) {
		return new PathNode(place, in, out, newKind);
	}

	/** With another handle, the opposite one left alone; null for none. */
	public PathNode with(Side side, Point handle) {
		return side == Side.IN ? new PathNode(place, handle, out, kind) : new PathNode(place, in, handle, kind);
	}

	/** With a handle moved and the opposite one following as the kind asks. */
	PathNode following(Side side, Point handle) {
		PathNode moved = with(side, handle);
		Point opposite = handle(side.other());
		if (kind == NodeKind.CORNER || opposite == null || handle.equals(place)) {
			return moved;
		}
		Point away = place.minus(handle);
		Point reach = kind == NodeKind.SYMMETRIC ? away : away.unit().times(opposite.distance(place));
		return moved.with(side.other(), place.plus(reach));
	}

	/** Symmetric no more if the lengths of the handles have become different. */
	PathNode weakened() {
		return kind == NodeKind.SYMMETRIC && NodeKind.of(place, in, out) != NodeKind.SYMMETRIC
				? withKind(NodeKind.SMOOTH) : this;
	}

	PathNode movedBy(Point by) {
		return new PathNode(place.plus(by), in == null ? null : in.plus(by), out == null ? null : out.plus(by), kind);
	}

	PathNode reversed() {
		return new PathNode(place, out, in, kind);
	}

	/** The kind is kept, although a map that stretches may make symmetric handles unequal. */
	PathNode transformed(Transform map) {
		return new PathNode(map.apply(place), in == null ? null : map.apply(in), out == null ? null : map.apply(out),
				kind);
	}
}
