package org.frisket.editing.layers;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Layer;

/** Shows a layer in another colour, locked or not. */
public final class SetLayerColour extends RecordingEdit {

	private static final Pattern FORM = Pattern.compile("#[0-9a-fA-F]{6}");

	private final Layer layer;
	private final String colour;

	/** @param colour as {@code #rrggbb}; null leaves it to the stock */
	public SetLayerColour(Layer layer, String colour) {
		super(Messages.SetLayerColour_name);
		this.layer = layer;
		this.colour = colour;
	}

	@Override
	public boolean canApply() {
		return (colour == null || FORM.matcher(colour).matches()) && !Objects.equals(colour, layer.getColour());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(layer);
	}

	@Override
	protected void change() {
		layer.setColour(colour);
	}
}
