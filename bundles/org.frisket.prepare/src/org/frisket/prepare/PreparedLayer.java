package org.frisket.prepare;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.model.Layer;

/** A layer with all that its elements come to, in the order of the model. */
public record PreparedLayer(Layer layer, List<PreparedElement> elements) {

	public PreparedLayer {
		elements = List.copyOf(elements);
	}

	/** The elements that are shown and handed out: no parts of combinations, and none at all if the layer is hidden. */
	public List<PreparedElement> shown() {
		return elements.stream().filter(prepared -> !prepared.part() && layer.isVisible() && prepared.element().isVisible()).toList();
	}

	public Bounds bounds() {
		return elements.stream().map(PreparedElement::bounds).reduce(Bounds.EMPTY, Bounds::with);
	}
}
