package org.frisket.ui.material.internal.shelf;

import java.util.ArrayList;
import java.util.List;

import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.editing.layers.SetLayerColour;
import org.frisket.editing.layers.SetLayerStock;
import org.frisket.material.Stock;
import org.frisket.material.shelf.PaperColour;
import org.frisket.model.Layer;

/** A stock of the shelf as that of a layer. */
final class LayerStock {

	private LayerStock() {
	}

	/** One step of undo. @param colour whether the layer is shown in the stock's colour as well, if that is known */
	static Edit of(Layer layer, Stock stock, boolean colour) {
		List<Edit> edits = new ArrayList<>();
		edits.add(new SetLayerStock(layer, stock.id()));
		if (colour) {
			PaperColour.of(stock.colour()).ifPresent(rgb -> edits.add(new SetLayerColour(layer, PaperColour.hex(rgb))));
		}
		return edits.size() == 1 ? edits.get(0) : new EditGroup(edits.get(0).name(), edits);
	}
}
