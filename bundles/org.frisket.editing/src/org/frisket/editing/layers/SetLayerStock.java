package org.frisket.editing.layers;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Layer;

/** Has a layer cut from another stock, locked or not. */
public final class SetLayerStock extends RecordingEdit {

	private final Layer layer;
	private final String stock;

	/** @param stock the id of the stock; blank or null for none */
	public SetLayerStock(Layer layer, String stock) {
		super(Messages.SetLayerStock_name);
		this.layer = layer;
		this.stock = stock == null || stock.isBlank() ? null : stock.strip();
	}

	@Override
	public boolean canApply() {
		return !Objects.equals(stock, layer.getStock());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(layer);
	}

	@Override
	protected void change() {
		layer.setStock(stock);
	}
}
