package org.frisket.ui.bench.internal.grips;

import java.util.List;

import org.eclipse.gef.GraphicalViewer;
import org.frisket.editing.Edit;
import org.frisket.editing.TransformElements;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.parts.ElementPart;

/**
 * Scales elements. A corner keeps the ratio of the sides, Shift frees it; the middle of a side changes one of them,
 * with Shift both. The opposite place stays, with Control or Alt the middle.
 */
final class ScaleTracker extends GripTracker {

	private final Grip grip;
	private final Bounds box;
	private final List<Element> elements;

	ScaleTracker(GraphicalViewer viewer, CanvasZoom zoom, Grip grip, Bounds box, List<ElementPart> parts) {
		super(viewer, zoom, parts);
		this.grip = grip;
		this.box = box;
		elements = parts.stream().map(ElementPart::element).toList();
	}

	private Scaling scaling() {
		return Scaling.of(box, grip, dx(), dy(), isShiftHeld(), isCentred(), step());
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
