package org.frisket.editing.layers;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Removal;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/** Takes a layer away with all that lies on it, and the mats that then have nothing left to stand behind. */
public final class RemoveLayer extends RecordingEdit {

	private final Layer layer;

	public RemoveLayer(Layer layer) {
		super(Messages.RemoveLayer_name);
		this.layer = layer;
	}

	/** A locked layer stays, and so does one with a locked element, or with one that a locked mat stands behind alone. */
	@Override
	public boolean canApply() {
		Job job = Jobs.jobOf(layer);
		return job != null && !layer.isLocked()
				&& Removal.of(job, layer.getElements()).stream().allMatch(Targets::free);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(layer));
	}

	@Override
	protected void change() {
		Job job = Jobs.jobOf(layer);
		Removal.remove(job, layer.getElements());
		job.getLayers().remove(layer);
	}
}
