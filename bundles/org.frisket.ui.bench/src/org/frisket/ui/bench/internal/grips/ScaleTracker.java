package org.frisket.ui.bench.internal.grips;

import java.util.List;
import java.util.Optional;

import org.eclipse.gef.GraphicalViewer;
import org.frisket.editing.Edit;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.geometry.snap.SnapAnchors;
import org.frisket.geometry.snap.SnapResult;
import org.frisket.model.Element;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.snap.SnapDrag;
import org.frisket.ui.bench.internal.snap.Snapping;

/**
 * Scales elements. A corner keeps the ratio of the sides, Shift frees it; the middle of a side changes one of them,
 * with Shift both. The opposite place stays, with Control the middle; with Alt nothing holds the grip.
 */
final class ScaleTracker extends GhostTracker {

	/** In mm; the size before it is taken to a round step. */
	private static final double FINEST_STEP = 1e-9;

	private final Grip grip;
	private final Bounds box;
	private final List<Element> elements;
	private final GraphicalViewer viewer;
	private final List<ElementPart> parts;
	private SnapDrag snap;
	private SnapResult held = SnapResult.NONE;

	ScaleTracker(GraphicalViewer viewer, CanvasZoom zoom, Grip grip, Bounds box, List<ElementPart> parts) {
		super(viewer, zoom, parts);
		this.grip = grip;
		this.box = box;
		this.viewer = viewer;
		this.parts = parts;
		elements = parts.stream().map(ElementPart::element).toList();
	}

	private Scaling scaling() {
		Scaling rounded = scaling(step());
		held = SnapResult.NONE;
		if (isFree()) {
			return rounded;
		}
		boolean keepsRatio = grip.isCorner() != isShiftHeld();
		Point place = scaling(FINEST_STEP).transform().apply(grip.on(box));
		held = snap().snap(new SnapAnchors(grip.across() == 0 ? List.of() : List.of(place.x()),
				grip.down() == 0 ? List.of() : List.of(place.y()),
				grip.isCorner() && !keepsRatio ? List.of(place) : List.of()));
		Scaling exact = rounded.held(held, grip.on(box), keepsRatio);
		if (keepsRatio && held.x().isPresent() && held.y().isPresent()) {
			// the other one was only near
			held = Math.abs(held.dx()) <= Math.abs(held.dy())
					? new SnapResult(held.x(), Optional.empty(), Optional.empty())
					: new SnapResult(Optional.empty(), held.y(), Optional.empty());
		}
		return exact;
	}

	private Scaling scaling(double step) {
		return Scaling.of(box, grip, dx(), dy(), isShiftHeld(), isCentred(), step);
	}

	private SnapDrag snap() {
		if (snap == null) {
			snap = Snapping.of(viewer).begin(parts);
		}
		return snap;
	}

	@Override
	void showHeld() {
		Transform map = map();
		snap().show(held, Bounds.of(map.apply(new Point(box.minX(), box.minY())))
				.with(map.apply(new Point(box.maxX(), box.maxY()))));
	}

	@Override
	protected void erase() {
		super.erase();
		if (snap != null) {
			snap.erase();
		}
	}

	@Override
	Edit edit() {
		Scaling scaling = scaling();
		return TransformElements.scale(elements, scaling.sx(), scaling.sy(), scaling.fixed().x(), scaling.fixed().y());
	}

	@Override
	Transform map() {
		return scaling().transform();
	}

	@Override
	String measure() {
		Scaling scaling = scaling();
		return LengthText.size(box.width() * scaling.sx(), box.height() * scaling.sy());
	}
}
