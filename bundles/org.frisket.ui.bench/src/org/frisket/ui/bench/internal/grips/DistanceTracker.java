package org.frisket.ui.bench.internal.grips;

import java.util.List;

import org.eclipse.gef.GraphicalViewer;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.SetMatDistance;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Transform;
import org.frisket.model.Mat;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.parts.ElementPart;

/** Lets a mat stand further out or in: it has no size of its own, only its distance from what it follows. */
final class DistanceTracker extends GhostTracker {

	private final Grip grip;
	private final Bounds box;
	private final Mat mat;

	DistanceTracker(GraphicalViewer viewer, CanvasZoom zoom, Grip grip, Bounds box, ElementPart part) {
		super(viewer, zoom, List.of(part));
		this.grip = grip;
		this.box = box;
		mat = (Mat) part.element();
	}

	private double distance() {
		double outwards = grip.across() != 0 ? grip.across() * dx() : grip.down() * dy();
		return Math.round((mat.getDistance() + outwards) / step()) * step();
	}

	@Override
	Edit edit() {
		return new SetMatDistance(mat, distance());
	}

	/** Nearly what will come of it, until it is worked out: the mat as large as its box will be. */
	@Override
	Transform map() {
		double more = distance() - mat.getDistance();
		double sx = Math.max(0, box.width() + 2 * more) / box.width();
		double sy = Math.max(0, box.height() + 2 * more) / box.height();
		return new Scaling(sx, sy, box.centre()).transform();
	}

	@Override
	String measure() {
		return LengthText.of(distance());
	}
}
