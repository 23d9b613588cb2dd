package org.frisket.editing.elements;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Layer;

/**
 * Puts a new element on the topmost layer that is free to take it: one that is seen and not locked, and that holds
 * another element of its kind or none at all. If there is none, a layer is made for it above all.
 */
public final class PlaceElement extends RecordingEdit {

	private final Job job;
	private final Element element;
	private final String layerName;
	private final String layerColour;

	/**
	 * @param element     in no job yet; it gets an id of the job
	 * @param layerName   what a new layer is called
	 * @param layerColour colour of a new layer, as {@code #rrggbb}
	 */
	public PlaceElement(Job job, Element element, String layerName, String layerColour) {
		super(NLS.bind(Messages.AddElement_name, Targets.spoken(List.of(element))));
		this.job = job;
		this.element = element;
		this.layerName = layerName;
		this.layerColour = layerColour;
	}

	@Override
	public boolean canApply() {
		return element.eContainer() == null;
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job);
	}

	@Override
	protected void change() {
		Layer layer = layer();
		element.setId(Ids.nextElement(job));
		layer.getElements().add(element);
	}

	private Layer layer() {
		for (int i = job.getLayers().size() - 1; i >= 0; i--) {
			Layer layer = job.getLayers().get(i);
			if (layer.isVisible() && !layer.isLocked() && takes(layer)) {
				return layer;
			}
		}
		Layer layer = FrisketFactory.INSTANCE.createLayer();
		layer.setId(Ids.nextLayer(job));
		layer.setName(layerName);
		layer.setColour(layerColour);
		job.getLayers().add(layer);
		return layer;
	}

	private boolean takes(Layer layer) {
		return layer.getElements().isEmpty()
				|| layer.getElements().stream().anyMatch(other -> other.eClass() == element.eClass());
	}
}
