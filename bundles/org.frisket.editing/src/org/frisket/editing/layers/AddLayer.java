package org.frisket.editing.layers;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Layer;

/** Lays a new, empty layer into the stack. */
public final class AddLayer extends RecordingEdit {

	private final Job job;
	private final int index;
	private final String layerName;
	private Layer layer;

	/** @param index how many layers lie below it */
	public AddLayer(Job job, int index, String name) {
		super(Messages.AddLayer_name);
		this.job = job;
		this.index = index;
		this.layerName = name;
	}

	@Override
	public boolean canApply() {
		return index >= 0 && index <= job.getLayers().size() && layerName != null && !layerName.isBlank();
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job);
	}

	@Override
	protected void change() {
		layer = FrisketFactory.INSTANCE.createLayer();
		layer.setId(Ids.nextLayer(job));
		layer.setName(layerName);
		job.getLayers().add(index, layer);
	}

	/** The new layer; null before the edit is applied. */
	public Layer layer() {
		return layer;
	}
}
