package org.frisket.ui.bench.internal.nodes;

import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.nodes.DrawnPath;
import org.frisket.geometry.snap.SnapAnchors;
import org.frisket.geometry.snap.SnapHold;
import org.frisket.geometry.snap.SnapResult;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.snap.SnapDrag;

/**
 * Where a node, a handle or a point of the pen comes to lie for a place of the pointer: on what holds it, and otherwise
 * at the nearest place on whole steps just finer than a pixel. All of them pass through here. Places are in mm of the
 * job.
 */
final class PointerPlace {

	private final CanvasZoom zoom;
	private final SnapDrag snap;
	private final boolean free;
	private SnapResult held = SnapResult.NONE;

	/** @param free whether nothing shall hold */
	PointerPlace(CanvasZoom zoom, SnapDrag snap, boolean free) {
		this.zoom = zoom;
		this.snap = snap;
		this.free = free;
	}

	/** The place meant by one. */
	Point meant(Point mm) {
		return held(mm, SnapAnchors.of(mm));
	}

	/** The place meant by one, at the same height as another. */
	Point across(Point mm, double y) {
		return new Point(held(mm, SnapAnchors.vertical(mm.x())).x(), y);
	}

	/** The place meant by one, above or below another. */
	Point down(Point mm, double x) {
		return new Point(x, held(mm, SnapAnchors.horizontal(mm.y())).y());
	}

	/** The place meant by one, in one of eight directions from another; in those nothing holds. */
	Point stepped(Point from, Point mm) {
		held = SnapResult.NONE;
		return DrawnPath.stepped(from, new Point(zoom.rounded(mm.x()), zoom.rounded(mm.y())));
	}

	private Point held(Point mm, SnapAnchors anchors) {
		held = free ? SnapResult.NONE : snap.snap(anchors);
		return new Point(held(mm.x(), held.x()), held(mm.y(), held.y()));
	}

	/** Exactly on the line that holds, without what is left of adding a shift. */
	private double held(double mm, Optional<SnapHold> hold) {
		return hold.map(each -> each.line().at()).orElseGet(() -> zoom.rounded(mm));
	}

	/** Shows what held the place that was asked for last. */
	void show(Point place) {
		snap.show(held, Bounds.of(place));
	}
}
