package org.frisket.prepare;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.frisket.geometry.Bounds;
import org.frisket.model.Job;

/** A job worked through to clean regions: layers from the back to the front, as in the model. */
public record PreparedJob(Job job, List<PreparedLayer> layers) {

	public PreparedJob {
		layers = List.copyOf(layers);
	}

	public Stream<PreparedElement> elements() {
		return layers.stream().flatMap(layer -> layer.elements().stream());
	}

	/** What the element with this id comes to; ids hold also where the job was copied to be prepared. */
	public Optional<PreparedElement> element(String id) {
		return elements().filter(prepared -> prepared.element().getId().equals(id)).findFirst();
	}

	/** This job with nothing on its layers but the element of this id. */
	public PreparedJob only(String id) {
		return new PreparedJob(job, layers.stream().map(layer -> new PreparedLayer(layer.layer(),
				layer.elements().stream().filter(prepared -> id.equals(prepared.element().getId())).toList()))
				.toList());
	}

	/** This job with nothing on its layers but that of the element of this id. */
	public PreparedJob around(String id) {
		return new PreparedJob(job, layers.stream().map(layer -> layer.elements().stream()
				.anyMatch(prepared -> id.equals(prepared.element().getId())) ? layer
						: new PreparedLayer(layer.layer(), List.of()))
				.toList());
	}

	/** What the steps noticed, in the order of the elements; {@link Makeready} adds what the checks find. */
	public List<Finding> findings() {
		return elements().flatMap(element -> element.findings().stream()).toList();
	}

	/** Bounds of what is shown, in mm. */
	public Bounds visibleBounds() {
		return layers.stream().flatMap(layer -> layer.shown().stream()).map(PreparedElement::bounds)
				.reduce(Bounds.EMPTY, Bounds::with);
	}

	/** Bounds of everything, in mm. */
	public Bounds bounds() {
		return layers.stream().map(PreparedLayer::bounds).reduce(Bounds.EMPTY, Bounds::with);
	}
}
