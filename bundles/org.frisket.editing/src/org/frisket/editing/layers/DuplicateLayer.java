package org.frisket.editing.layers;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Groupings;
import org.frisket.model.Element;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/**
 * Lays a copy of a layer, with copies of all that lies on it, above it. A mat that lies on the same layer as what it
 * follows follows the copy; any other follows the same elements as before.
 */
public final class DuplicateLayer extends RecordingEdit {

	private final Layer layer;
	private final String copyName;
	private Layer copy;

	/** @param name what the copy is called */
	public DuplicateLayer(Layer layer, String name) {
		super(Messages.DuplicateLayer_name);
		this.layer = layer;
		this.copyName = name;
	}

	@Override
	public boolean canApply() {
		return Jobs.jobOf(layer) != null && copyName != null && !copyName.isBlank();
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(layer));
	}

	@Override
	protected void change() {
		Job job = Jobs.jobOf(layer);
		EcoreUtil.Copier copier = new EcoreUtil.Copier();
		copy = (Layer) copier.copy(layer);
		copier.copyReferences();
		copy.setName(copyName);
		copy.setId(Ids.nextLayer(job));
		List<Element> elements = List.copyOf(copy.getElements());
		copy.getElements().clear();
		job.getLayers().add(job.getLayers().indexOf(layer) + 1, copy);
		Map<Element, Element> copies = new LinkedHashMap<>();
		for (int i = 0; i < elements.size(); i++) {
			// before it is there, for whoever sees it come asks for its id
			elements.get(i).setId(Ids.nextElement(job));
			copy.getElements().add(elements.get(i));
			copies.put(layer.getElements().get(i), elements.get(i));
		}
		Groupings.copy(List.copyOf(job.getGroups()), copies, job);
	}

	/** The new layer; null before the edit is applied. */
	public Layer copy() {
		return copy;
	}
}
