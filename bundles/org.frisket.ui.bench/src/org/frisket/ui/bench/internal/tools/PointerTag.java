package org.frisket.ui.bench.internal.tools;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.frisket.ui.bench.internal.figures.TagFigure;

/** A text beside the pointer, whole on the canvas: below it, or above where there is no room below. */
public final class PointerTag {

	private static final int DISTANCE_PX = 18;

	private final EditPartViewer viewer;
	private TagFigure figure;

	public PointerTag(EditPartViewer viewer) {
		this.viewer = viewer;
	}

	/** @param pointer in pixels of the canvas */
	public void show(String text, Point pointer) {
		if (figure == null) {
			figure = new TagFigure();
			layer().add(figure);
		}
		figure.setText(text);
		Rectangle seen = ((FigureCanvas) viewer.getControl()).getViewport().getClientArea();
		Point place = beside(pointer, figure.getPreferredSize(), seen.getSize());
		figure.getParent().translateToRelative(place);
		figure.showAt(place, seen);
	}

	/** Where its top left comes to lie, in pixels of the canvas. */
	private static Point beside(Point pointer, Dimension size, Dimension canvas) {
		Point place = pointer.getTranslated(DISTANCE_PX, DISTANCE_PX);
		if (place.y + size.height > canvas.height) {
			// pushed up only, it would lie under the pointer in the corner
			place.y = pointer.y - DISTANCE_PX - size.height;
		}
		return place;
	}

	public void erase() {
		if (figure != null && figure.getParent() != null) {
			figure.getParent().remove(figure);
		}
		figure = null;
	}

	/** What it says; empty if it is not seen. */
	public String text() {
		return figure == null ? "" : figure.getText(); //$NON-NLS-1$
	}

	private IFigure layer() {
		return LayerManager.Helper.find(viewer.getRootEditPart()).getLayer(LayerConstants.FEEDBACK_LAYER);
	}
}
