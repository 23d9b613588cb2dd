package org.frisket.editing.layers;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/** Lays elements on a new layer above the one that the topmost of them lies on; it is of the same stock and colour. */
public final class LayApart extends RecordingEdit {

	private final Set<Element> elements;

	public LayApart(List<? extends Element> elements) {
		super(NLS.bind(Messages.LayApart_name, Targets.spoken(elements)));
		this.elements = new LinkedHashSet<>(elements);
	}

	@Override
	public boolean canApply() {
		return !elements.isEmpty() && Targets.freeInOneJob(elements)
				&& !elements.containsAll(topmost().getElements());
	}

	private Layer topmost() {
		Layer topmost = null;
		for (Layer layer : job().getLayers()) {
			topmost = layer.getElements().stream().anyMatch(elements::contains) ? layer : topmost;
		}
		return topmost;
	}

	private Job job() {
		return Jobs.jobOf(elements.iterator().next());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job());
	}

	@Override
	protected void change() {
		Job job = job();
		Layer below = topmost();
		Layer layer = FrisketFactory.INSTANCE.createLayer();
		layer.setId(Ids.nextLayer(job));
		layer.setName(below.getName());
		layer.setStock(below.getStock());
		layer.setColour(below.getColour());
		job.getLayers().add(job.getLayers().indexOf(below) + 1, layer);
		layer.getElements().addAll(Jobs.elements(job).stream().filter(elements::contains).toList());
	}
}
