package org.frisket.ui.bench.internal.snap;

import org.eclipse.gef.GraphicalViewer;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.snap.SnapAnchors;
import org.frisket.geometry.snap.SnapResult;
import org.frisket.geometry.snap.Snapper;
import org.frisket.ui.bench.internal.canvas.BenchRootPart;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/** One drag: what could hold it was gathered when it began. */
public final class SnapDrag {

	/** How near a thing must come before it is held. */
	private static final double REACH_PX = 6;

	private final Snapper snapper;
	private final CanvasZoom zoom;
	private final SnapHint hint;

	SnapDrag(GraphicalViewer viewer, Snapper snapper) {
		this.snapper = snapper;
		zoom = ((BenchRootPart) viewer.getRootEditPart()).zoom();
		hint = new SnapHint(viewer, zoom);
	}

	/** What holds a box where it would come to lie, in mm. */
	public SnapResult snap(Bounds box) {
		return snap(SnapAnchors.of(box));
	}

	/** What holds a point where it would come to lie, in mm. */
	public SnapResult snap(Point point) {
		return snap(SnapAnchors.of(point));
	}

	/** What holds any of these places. */
	public SnapResult snap(SnapAnchors anchors) {
		return snapper.snap(anchors, REACH_PX / zoom.pixelsPerMm());
	}

	/**
	 * Shows what holds.
	 *
	 * @param box what is moved, where it is held; a point is a box without size
	 */
	public void show(SnapResult held, Bounds box) {
		hint.show(held, box);
	}

	/** Shows nothing any more. */
	public void erase() {
		hint.erase();
	}
}
