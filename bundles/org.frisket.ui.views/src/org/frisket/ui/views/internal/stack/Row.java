package org.frisket.ui.views.internal.stack;

import java.util.ArrayList;
import java.util.List;

import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/**
 * One row of the stack.
 *
 * @param layer   the layer it stands for, or on which the element lies
 * @param element null for the row of the layer itself
 */
record Row(Layer layer, Element element) {

	static Row of(Element element) {
		return new Row(Jobs.layerOf(element), element);
	}

	boolean isLayer() {
		return element == null;
	}

	boolean isVisible() {
		return isLayer() ? layer.isVisible() : element.isVisible();
	}

	boolean isLocked() {
		return isLayer() ? layer.isLocked() : element.isLocked();
	}

	/** The rows of a job: what lies on top stands on top, and the elements of a layer stand under it. */
	static List<Row> of(Job job) {
		List<Row> rows = new ArrayList<>();
		for (int i = job.getLayers().size() - 1; i >= 0; i--) {
			Layer layer = job.getLayers().get(i);
			rows.add(new Row(layer, null));
			for (int j = layer.getElements().size() - 1; j >= 0; j--) {
				rows.add(new Row(layer, layer.getElements().get(j)));
			}
		}
		return rows;
	}
}
