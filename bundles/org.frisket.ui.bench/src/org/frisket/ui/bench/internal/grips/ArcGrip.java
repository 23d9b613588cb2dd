package org.frisket.ui.bench.internal.grips;

import java.util.List;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.gef.editparts.LayerManager;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Flow;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.figures.GripFigure;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/**
 * A round grip on the circle of a wording that is set on an arc and alone selected, where the text has its place on it:
 * dragged away from the middle it changes the radius, dragged round it turns the text on the circle.
 */
public final class ArcGrip {

	private final GraphicalViewer viewer;
	private GripFigure figure;
	private ElementPart part;

	public ArcGrip(GraphicalViewer viewer, BenchDocument document, CanvasZoom zoom) {
		this.viewer = viewer;
		viewer.addSelectionChangedListener(event -> refresh());
		document.addPictureListener(this::refresh);
		viewer.getEditDomain().getCommandStack().addCommandStackEventListener(this::stackEvent);
		zoom.addListener(factor -> refresh());
	}

	private void stackEvent(CommandStackEvent event) {
		if (event.isPostChangeEvent()) {
			refresh();
		}
	}

	/** The grip as it is seen; null if it is not. */
	public GripFigure figure() {
		return figure;
	}

	private void refresh() {
		if (viewer.getControl() == null || viewer.getControl().isDisposed()) {
			return;
		}
		List<ElementPart> movable = Selection.movableParts(viewer);
		part = movable.size() == 1 ? movable.get(0) : null;
		if (part != null && part.element() instanceof Wording wording && wording.getFlow() == Flow.ARC
				&& wording.getArcRadius() > 0) {
			show(place(wording));
		} else if (figure != null) {
			layer().remove(figure);
			figure = null;
		}
	}

	/** In the job's frame. */
	private static Point place(Wording wording) {
		double angle = Math.toRadians(wording.getArcAngle());
		Transform toJob = PictureMaker.transform(wording.getTransform());
		return toJob.apply(new Point(wording.getArcRadius() * Math.sin(angle), -wording.getArcRadius() * Math.cos(angle)));
	}

	private void show(Point place) {
		if (figure == null) {
			figure = new GripFigure(true, () -> new ArcTracker(viewer, zoom(), part));
			figure.setCursor(Cursors.SIZEALL);
			layer().add(figure);
		}
		double scale = zoom().pixelsPerMm();
		figure.put((int) Math.round(place.x() * scale), (int) Math.round(place.y() * scale));
	}

	private CanvasZoom zoom() {
		return ((JobPart) viewer.getContents()).zoom();
	}

	private IFigure layer() {
		return LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.HANDLE_LAYER);
	}
}
