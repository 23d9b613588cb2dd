package org.frisket.editing.layers;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/** Restacks a layer, locked or not. */
public final class MoveLayer extends RecordingEdit {

	private final Layer layer;
	private final int index;

	/** @param index how many layers lie below it afterwards */
	public MoveLayer(Layer layer, int index) {
		super(Messages.MoveLayer_name);
		this.layer = layer;
		this.index = index;
	}

	@Override
	public boolean canApply() {
		Job job = Jobs.jobOf(layer);
		return job != null && index >= 0 && index < job.getLayers().size() && index != job.getLayers().indexOf(layer);
	}

	/** The job with all that it contains: its list of layers is what changes. */
	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(layer));
	}

	@Override
	protected void change() {
		Job job = Jobs.jobOf(layer);
		job.getLayers().remove(layer);
		job.getLayers().add(index, layer);
	}
}
