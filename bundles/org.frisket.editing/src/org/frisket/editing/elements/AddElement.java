package org.frisket.editing.elements;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/** Puts a new element on a layer and gives it an id of the job. */
public final class AddElement extends RecordingEdit {

	private final Layer layer;
	private final Element element;
	private final int index;

	/** Adds above the layer's other elements. */
	public AddElement(Layer layer, Element element) {
		this(layer, element, layer.getElements().size());
	}

	/** @param index how many of the layer's elements lie below it */
	public AddElement(Layer layer, Element element, int index) {
		super(NLS.bind(Messages.AddElement_name, Targets.spoken(List.of(element))));
		this.layer = layer;
		this.element = element;
		this.index = index;
	}

	@Override
	public boolean canApply() {
		return !layer.isLocked() && Jobs.jobOf(layer) != null && element.eContainer() == null && index >= 0
				&& index <= layer.getElements().size();
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(layer);
	}

	@Override
	protected void change() {
		Job job = Jobs.jobOf(layer);
		if (element.getId() == null || Jobs.element(job, element.getId()).isPresent()) {
			element.setId(Ids.nextElement(job));
		}
		layer.getElements().add(index, element);
	}
}
