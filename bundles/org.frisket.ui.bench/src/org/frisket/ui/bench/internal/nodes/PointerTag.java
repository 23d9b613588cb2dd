package org.frisket.ui.bench.internal.nodes;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.frisket.ui.bench.internal.figures.TagFigure;

/** A text beside the pointer. */
final class PointerTag {

	private static final int DISTANCE_PX = 18;

	private TagFigure figure;

	/** @param pointer in pixels of the canvas */
	void show(IFigure layer, String text, Point pointer) {
		if (figure == null) {
			figure = new TagFigure();
			layer.add(figure);
		}
		figure.setText(text);
		Point place = pointer.getTranslated(DISTANCE_PX, DISTANCE_PX);
		figure.getParent().translateToRelative(place);
		figure.setBounds(new Rectangle(place, figure.getPreferredSize()));
	}

	void erase() {
		if (figure != null && figure.getParent() != null) {
			figure.getParent().remove(figure);
		}
		figure = null;
	}

	/** What it says; empty if it is not seen. */
	String text() {
		return figure == null ? "" : figure.getText(); //$NON-NLS-1$
	}
}
