package org.frisket.ui.bench.internal.tools;

import java.util.Optional;

import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.frisket.ui.bench.BenchDrop;
import org.frisket.ui.bench.FilesDrop;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/** Takes what is dragged from a view, or files from outside, and let go over the bench. */
public final class DropOnBench extends DropTargetAdapter {

	private final Control canvas;
	private final CanvasZoom zoom;
	private final JobOnBench bench;

	public DropOnBench(Control canvas, CanvasZoom zoom, JobOnBench bench) {
		this.canvas = canvas;
		this.zoom = zoom;
		this.bench = bench;
		DropTarget target = new DropTarget(canvas, DND.DROP_COPY | DND.DROP_DEFAULT);
		target.setTransfer(LocalSelectionTransfer.getTransfer(), FileTransfer.getInstance());
		target.addDropListener(this);
	}

	private static Optional<BenchDrop> dragged() {
		Transfer transfer = LocalSelectionTransfer.getTransfer();
		return ((LocalSelectionTransfer) transfer).getSelection() instanceof IStructuredSelection selection
				&& selection.getFirstElement() instanceof BenchDrop drop ? Optional.of(drop) : Optional.empty();
	}

	@Override
	public void dragEnter(DropTargetEvent event) {
		event.detail = isOfFiles(event) || dragged().isPresent() ? DND.DROP_COPY : DND.DROP_NONE;
		event.feedback = DND.FEEDBACK_NONE;
	}

	private static boolean isOfFiles(DropTargetEvent event) {
		return event.currentDataType != null && FileTransfer.getInstance().isSupportedType(event.currentDataType);
	}

	@Override
	public void dragOver(DropTargetEvent event) {
		dragEnter(event);
	}

	@Override
	public void dragOperationChanged(DropTargetEvent event) {
		dragEnter(event);
	}

	@Override
	public void drop(DropTargetEvent event) {
		Point pixel = canvas.toControl(event.x, event.y);
		org.frisket.geometry.Point place = zoom.toMm(pixel.x, pixel.y);
		if (isOfFiles(event)) {
			FilesDrop.take(bench, event.data, Optional.of(place));
			return;
		}
		dragged().ifPresent(drop -> drop.dropped(bench, place));
	}
}
