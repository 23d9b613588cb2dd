package org.frisket.editing.layers;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Layer;

/** Gives a layer another name, locked or not. */
public final class RenameLayer extends RecordingEdit {

	private final Layer layer;
	private final String layerName;

	public RenameLayer(Layer layer, String name) {
		super(Messages.RenameLayer_name);
		this.layer = layer;
		this.layerName = name;
	}

	@Override
	public boolean canApply() {
		return layerName != null && !layerName.isBlank() && !layerName.equals(layer.getName());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(layer);
	}

	@Override
	protected void change() {
		layer.setName(layerName);
	}
}
