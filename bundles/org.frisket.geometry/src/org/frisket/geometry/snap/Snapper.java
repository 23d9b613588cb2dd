package org.frisket.geometry.snap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;

/**
 * Says by how much a moved thing has to go to lie on a line or a node that is near. It is made once, when a drag
 * begins, and asked at every step.
 *
 * <p>Each axis is held by itself by the nearest line, and what is equally near in the order of {@link SnapKind}. A node
 * is a point: it holds only what is within reach of the point itself, and where it holds one axis it holds the other
 * too, unless a guide does.
 */
public final class Snapper {

	/** Holds nothing. */
	public static final Snapper NONE = new Builder().build();

	private final SnapAxis vertical;
	private final SnapAxis horizontal;
	private final NearestNode nodes;

	private Snapper(Builder builder) {
		SnapGrid grid = builder.grid;
		double step = grid == null ? 0 : grid.step();
		Bounds area = grid == null ? Bounds.EMPTY : grid.area();
		vertical = new SnapAxis(builder.vertical, step, area.minX(), area.maxX());
		horizontal = new SnapAxis(builder.horizontal, step, area.minY(), area.maxY());
		nodes = new NearestNode(builder.nodes);
	}

	/** @param reach how near, in mm, a line or a node must be */
	public SnapResult snap(Bounds box, double reach) {
		return snap(SnapAnchors.of(box), reach);
	}

	/** @param reach how near, in mm, a line or a node must be */
	public SnapResult snap(Point point, double reach) {
		return snap(SnapAnchors.of(point), reach);
	}

	/** @param reach how near, in mm, a line or a node must be */
	public SnapResult snap(SnapAnchors anchors, double reach) {
		Point node = null;
		Point anchor = null;
		double least = reach;
		for (Point each : anchors.points()) {
			Point near = nodes.to(each, least);
			if (near != null && (node == null || near.distance(each) < least)) {
				node = near;
				anchor = each;
				least = near.distance(each);
			}
		}
		SnapHold nodeX = node == null ? null : hold(node.x() - anchor.x(), node.x(), node.y());
		SnapHold nodeY = node == null ? null : hold(node.y() - anchor.y(), node.y(), node.x());
		SnapHold x = vertical.nearest(anchors.xs(), reach, nodeX);
		SnapHold y = horizontal.nearest(anchors.ys(), reach, nodeY);
		if (holds(x) && !guides(y)) {
			y = nodeY;
		} else if (holds(y) && !guides(x)) {
			x = nodeX;
		}
		return new SnapResult(Optional.ofNullable(x), Optional.ofNullable(y),
				holds(x) && holds(y) ? Optional.of(node) : Optional.empty());
	}

	private static SnapHold hold(double shift, double at, double along) {
		return new SnapHold(shift, new SnapLine(at, SnapKind.NODE, along, along));
	}

	private static boolean holds(SnapHold hold) {
		return hold != null && hold.kind() == SnapKind.NODE;
	}

	private static boolean guides(SnapHold hold) {
		return hold != null && hold.kind() == SnapKind.GUIDE;
	}

	/** Gathers what shall hold. */
	public static final class Builder {

		private final List<SnapLine> vertical = new ArrayList<>();
		private final List<SnapLine> horizontal = new ArrayList<>();
		private final List<Point> nodes = new ArrayList<>();
		private SnapGrid grid;

		/** A guide; {@code at} is its y in mm if it runs across, otherwise its x. */
		public Builder guide(boolean across, double at) {
			(across ? horizontal : vertical).add(SnapLine.endless(at, SnapKind.GUIDE));
			return this;
		}

		/** The four edges of a box; nothing of an empty one. */
		public Builder edges(Bounds box) {
			if (!box.isEmpty()) {
				vertical.add(new SnapLine(box.minX(), SnapKind.EDGE, box.minY(), box.maxY()));
				vertical.add(new SnapLine(box.maxX(), SnapKind.EDGE, box.minY(), box.maxY()));
				horizontal.add(new SnapLine(box.minY(), SnapKind.EDGE, box.minX(), box.maxX()));
				horizontal.add(new SnapLine(box.maxY(), SnapKind.EDGE, box.minX(), box.maxX()));
			}
			return this;
		}

		/** The lines through the centre of a box; nothing of an empty one. */
		public Builder centre(Bounds box) {
			if (!box.isEmpty()) {
				vertical.add(new SnapLine(box.centre().x(), SnapKind.CENTRE, box.minY(), box.maxY()));
				horizontal.add(new SnapLine(box.centre().y(), SnapKind.CENTRE, box.minX(), box.maxX()));
			}
			return this;
		}

		/** An end of a curve. */
		public Builder node(Point node) {
			nodes.add(node);
			return this;
		}

		/** In place of a grid that was given before. */
		public Builder grid(SnapGrid lines) {
			grid = lines;
			return this;
		}

		public Snapper build() {
			return new Snapper(this);
		}
	}
}
