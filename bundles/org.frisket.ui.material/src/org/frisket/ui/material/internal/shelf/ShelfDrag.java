package org.frisket.ui.material.internal.shelf;

import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSource;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.frisket.material.Stock;
import org.frisket.model.Layer;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.LayerDrop;

/** Lets a stock be dragged off the shelf, onto a layer of the stack. */
final class ShelfDrag extends DragSourceAdapter {

	/** What is dragged. */
	private record Dragged(Stock stock) implements LayerDrop {

		@Override
		public void dropped(JobOnBench bench, Layer layer) {
			bench.edits().execute(LayerStock.of(layer, stock, true));
		}
	}

	private final ShelfCanvas canvas;

	ShelfDrag(ShelfCanvas canvas) {
		this.canvas = canvas;
		DragSource source = new DragSource(canvas, DND.DROP_COPY);
		source.setTransfer(LocalSelectionTransfer.getTransfer());
		source.addDragListener(this);
	}

	@Override
	public void dragStart(DragSourceEvent event) {
		Stock stock = canvas.at(event.y).orElse(null);
		event.doit = stock != null;
		if (event.doit) {
			LocalSelectionTransfer.getTransfer().setSelection(new StructuredSelection(new Dragged(stock)));
			LocalSelectionTransfer.getTransfer().setSelectionSetTime(event.time & 0xFFFFFFFFL);
		}
	}

	@Override
	public void dragSetData(DragSourceEvent event) {
		event.data = LocalSelectionTransfer.getTransfer().getSelection();
	}

	@Override
	public void dragFinished(DragSourceEvent event) {
		LocalSelectionTransfer.getTransfer().setSelection(null);
	}
}
