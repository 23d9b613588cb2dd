package org.frisket.ui.views.internal.stack;

import java.util.List;

import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.Edit;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.elements.DuplicateElements;
import org.frisket.editing.elements.GroupElements;
import org.frisket.editing.elements.RenameElements;
import org.frisket.editing.elements.SetElements;
import org.frisket.editing.elements.UngroupElements;
import org.frisket.editing.layers.AddLayer;
import org.frisket.editing.layers.DuplicateLayer;
import org.frisket.editing.layers.MoveLayer;
import org.frisket.editing.layers.RemoveLayer;
import org.frisket.editing.layers.RenameLayer;
import org.frisket.editing.layers.RestackElements;
import org.frisket.editing.layers.SetLayerColour;
import org.frisket.editing.layers.SetLayerStock;
import org.frisket.editing.layers.SetLayers;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.ui.views.StockChooser;
import org.frisket.ui.views.internal.ElementText;

/**
 * What is done from the stack: to the layer of the current row if that is the row of a layer, else to the selected
 * elements that the current row is among, or to its own.
 */
public final class StackActions {

	/** In mm, so that a copy is seen beside its original. */
	private static final double SHIFT = 5;

	private final StackCanvas canvas;

	StackActions(StackCanvas canvas) {
		this.canvas = canvas;
	}

	/** Whether it is a layer that is acted on. */
	boolean isOnLayer() {
		return canvas.current() != null && canvas.current().isLayer();
	}

	/** The elements that are acted on; none where it is a layer. */
	List<Element> elements() {
		if (canvas.current() == null || isOnLayer()) {
			return List.of();
		}
		List<Element> selection = canvas.bench().selection();
		return selection.contains(canvas.current().element()) ? selection : List.of(canvas.current().element());
	}

	/** "Wording: Ferry" or "3 elements". */
	String spoken(List<Element> elements) {
		return elements.size() == 1 ? ElementText.of(elements.get(0))
				: NLS.bind(Messages.StackActions_elements, elements.size());
	}

	private Layer layer() {
		return canvas.currentLayer();
	}

	private Job job() {
		return canvas.bench().job();
	}

	/** Makes a row the current one, and selects its element. */
	void go(Row row) {
		canvas.setCurrent(row);
		if (!row.isLayer()) {
			canvas.bench().select(List.of(row.element()));
		}
	}

	void selectAllOfLayer() {
		if (layer() != null) {
			canvas.bench().select(layer().getElements());
		}
	}

	/** Selects the outermost group that the current element is in. */
	void selectGroup() {
		elements().stream().findFirst().flatMap(Jobs::groupOf)
				.ifPresent(group -> canvas.bench().select(Jobs.elements(group)));
	}

	/** Shows or hides. */
	public void toggleVisible() {
		if (canvas.current() != null) {
			boolean visible = !canvas.current().isVisible();
			canvas.execute(isOnLayer() ? SetLayers.visible(List.of(layer()), visible)
					: SetElements.visible(elements(), visible));
		}
	}

	/** Pins or unpins. */
	public void toggleLocked() {
		if (canvas.current() != null) {
			boolean locked = !canvas.current().isLocked();
			canvas.execute(
					isOnLayer() ? SetLayers.locked(List.of(layer()), locked) : SetElements.locked(elements(), locked));
		}
	}

	/** Moves up by one place. An element at the top of its layer goes to the bottom of the next one above. */
	public void raise() {
		move(1);
	}

	/** Moves down by one place. */
	public void lower() {
		move(-1);
	}

	private void move(int by) {
		if (isOnLayer()) {
			canvas.execute(new MoveLayer(layer(), job().getLayers().indexOf(layer()) + by));
			canvas.setCurrent(canvas.current());
		} else if (canvas.current() != null) {
			List<Element> moved = elements();
			restack(next(moved, by), moved);
		}
	}

	/** One place up or down, seen from the outermost of the moved ones in that direction. */
	private Edit next(List<Element> moved, int by) {
		List<Element> all = layer().getElements();
		List<Element> others = all.stream().filter(element -> !moved.contains(element)).toList();
		List<Element> here = all.stream().filter(moved::contains).toList();
		int edge = all.indexOf(here.get(by > 0 ? here.size() - 1 : 0));
		int below = (int) others.stream().filter(element -> all.indexOf(element) < edge).count() + by;
		if (below >= 0 && below <= others.size()) {
			return new RestackElements(moved, layer(), below);
		}
		int next = job().getLayers().indexOf(layer()) + by;
		if (next < 0 || next >= job().getLayers().size()) {
			return new RestackElements(moved, layer(), by > 0 ? others.size() : 0);
		}
		Layer target = job().getLayers().get(next);
		return by > 0 ? new RestackElements(moved, target, 0) : RestackElements.onto(moved, target);
	}

	/** Restacks elements, and keeps them selected on their new layer. */
	void restack(Edit edit, List<Element> elements) {
		List<Element> kept = List.copyOf(elements);
		Element one = canvas.current().element();
		canvas.execute(edit);
		canvas.bench().select(kept);
		canvas.setCurrent(Row.of(one));
	}

	/** Lets the user type another name in its place. */
	public void rename() {
		Row row = canvas.current();
		if (row == null) {
			return;
		}
		if (row.isLayer()) {
			canvas.type(row, row.layer().getName(), "", name -> canvas.execute(new RenameLayer(row.layer(), name))); //$NON-NLS-1$
		} else if (!Jobs.isLocked(row.element())) {
			canvas.type(row, row.element().getName(), ElementText.of(row.element()),
					name -> canvas.execute(new RenameElements(List.of(row.element()), name)));
		}
	}

	/** Lets the user choose the stock of the current layer, or type it where there is nothing to choose from. */
	public void nameStock() {
		if (layer() != null) {
			Layer named = layer();
			Object chooser = Platform.getAdapterManager().loadAdapter(canvas, StockChooser.class.getName());
			if (chooser != null) {
				((StockChooser) chooser).choose(canvas.bench(), named, canvas, canvas.sheetOf(new Row(named, null)));
				return;
			}
			canvas.type(new Row(named, null), named.getStock(), Messages.StackActions_stock,
					stock -> canvas.execute(new SetLayerStock(named, stock)));
		}
	}

	/** Offers the colours for the current layer. */
	public void chooseColour() {
		if (layer() != null) {
			new StockColours(canvas, layer()).open();
		}
	}

	void colour(Layer coloured, String colour) {
		canvas.execute(new SetLayerColour(coloured, colour));
	}

	/** Lays a new layer above the current one and asks for its name. */
	public void addLayer() {
		int index = layer() == null ? job().getLayers().size() : job().getLayers().indexOf(layer()) + 1;
		AddLayer edit = new AddLayer(job(), index, NLS.bind(Messages.StackActions_layer, job().getLayers().size() + 1));
		canvas.execute(edit);
		canvas.setCurrent(new Row(edit.layer(), null));
		rename();
	}

	/** Copies the layer, or the elements. */
	public void duplicate() {
		if (isOnLayer()) {
			DuplicateLayer edit = new DuplicateLayer(layer(),
					NLS.bind(Messages.StackActions_copy, String.valueOf(layer().getName())));
			canvas.execute(edit);
			canvas.setCurrent(new Row(edit.copy(), null));
		} else if (canvas.current() != null) {
			DuplicateElements edit = new DuplicateElements(elements(), SHIFT, SHIFT);
			canvas.execute(edit);
			if (!edit.copies().isEmpty()) {
				canvas.bench().select(edit.copies());
				canvas.setCurrent(Row.of(edit.copies().get(edit.copies().size() - 1)));
			}
		}
	}

	/** Removes the layer with all that lies on it, or the elements. */
	public void remove() {
		if (canvas.current() != null) {
			canvas.execute(isOnLayer() ? new RemoveLayer(layer()) : new DeleteElements(elements()));
		}
	}

	void group() {
		canvas.execute(new GroupElements(elements()));
	}

	void ungroup() {
		canvas.execute(new UngroupElements(elements()));
	}
}
