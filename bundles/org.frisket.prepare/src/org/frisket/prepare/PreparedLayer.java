package org.frisket.prepare;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.model.Layer;

/** A layer with all that its elements come to, in the order of the model. */
public record PreparedLayer(Layer layer, List<PreparedElement> elements) {

	public PreparedLayer {
		elements = List.copyOf(elements);
	}

	public Bounds bounds() {
		return elements.stream().map(PreparedElement::bounds).reduce(Bounds.EMPTY, Bounds::with);
	}
}
