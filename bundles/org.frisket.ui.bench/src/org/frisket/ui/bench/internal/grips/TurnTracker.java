package org.frisket.ui.bench.internal.grips;

import java.text.NumberFormat;
import java.util.List;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.Edit;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.parts.ElementPart;

/** Turns elements about the middle of their box by whole degrees; Shift keeps to steps of 15. */
final class TurnTracker extends GhostTracker {

	private static final int STEP = 1;
	private static final int WIDE_STEP = 15;

	private final Bounds box;
	private final List<Element> elements;

	TurnTracker(GraphicalViewer viewer, CanvasZoom zoom, Bounds box, List<ElementPart> parts) {
		super(viewer, zoom, parts);
		this.box = box;
		elements = parts.stream().map(ElementPart::element).toList();
	}

	/** Clockwise to the viewer, from -179 to 180. */
	private double degrees() {
		Point start = zoom.toMm(getStartLocation().x, getStartLocation().y).minus(box.centre());
		double turned = Math.toDegrees(Math.atan2(start.y() + dy(), start.x() + dx()) - Math.atan2(start.y(), start.x()));
		int step = isShiftHeld() ? WIDE_STEP : STEP;
		double rounded = Math.round(turned / step) * (double) step;
		return rounded > 180 ? rounded - 360 : rounded <= -180 ? rounded + 360 : rounded;
	}

	@Override
	Edit edit() {
		return TransformElements.rotate(elements, Math.toRadians(degrees()), box.centre().x(), box.centre().y());
	}

	@Override
	Transform map() {
		Point centre = box.centre();
		return Transform.translation(-centre.x(), -centre.y()).then(Transform.rotation(Math.toRadians(degrees())))
				.then(Transform.translation(centre.x(), centre.y()));
	}

	@Override
	String measure() {
		return NLS.bind(Messages.TurnTracker_degrees, NumberFormat.getIntegerInstance().format(degrees()));
	}
}
