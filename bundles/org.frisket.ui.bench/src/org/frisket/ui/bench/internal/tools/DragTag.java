package org.frisket.ui.bench.internal.tools;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.frisket.ui.bench.internal.figures.TagFigure;

/** A measure beside the pointer while something is dragged. */
public final class DragTag {

	private static final int DISTANCE_PX = 18;

	private final EditPartViewer viewer;
	private TagFigure tag;

	public DragTag(EditPartViewer viewer) {
		this.viewer = viewer;
	}

	/** @param pointer in pixels of the canvas */
	public void show(String text, Point pointer) {
		if (tag == null) {
			tag = new TagFigure();
			layer().add(tag);
		}
		tag.setText(text);
		Point place = pointer.getTranslated(DISTANCE_PX, DISTANCE_PX);
		tag.getParent().translateToRelative(place);
		tag.setBounds(new Rectangle(place, tag.getPreferredSize()));
	}

	public void erase() {
		if (tag != null) {
			tag.getParent().remove(tag);
			tag = null;
		}
	}

	private IFigure layer() {
		return LayerManager.Helper.find(viewer.getRootEditPart()).getLayer(LayerConstants.FEEDBACK_LAYER);
	}
}
