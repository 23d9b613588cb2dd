package org.frisket.ui.views.internal.stack;

import java.util.Optional;

import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.frisket.ui.views.LayerDrop;

/** Takes what is dragged from another view and let go over a layer; beside the files that the stack takes. */
final class StackDrop extends DropTargetAdapter {

	private final StackCanvas canvas;

	private StackDrop(StackCanvas canvas) {
		this.canvas = canvas;
	}

	/** @param canvas that takes files already: a control has one target only */
	static void onto(StackCanvas canvas) {
		DropTarget target = (DropTarget) canvas.getData(DND.DROP_TARGET_KEY);
		target.setTransfer(LocalSelectionTransfer.getTransfer(), FileTransfer.getInstance());
		target.addDropListener(new StackDrop(canvas));
	}

	private static boolean isOfFiles(DropTargetEvent event) {
		return event.currentDataType != null && FileTransfer.getInstance().isSupportedType(event.currentDataType);
	}

	private static Optional<LayerDrop> dragged(DropTargetEvent event) {
		return !isOfFiles(event) && LocalSelectionTransfer.getTransfer().getSelection() instanceof IStructuredSelection selection
				&& selection.getFirstElement() instanceof LayerDrop drop ? Optional.of(drop) : Optional.empty();
	}

	private Row row(DropTargetEvent event) {
		return canvas.bench() == null ? null : canvas.rowAt(canvas.toControl(event.x, event.y).y);
	}

	@Override
	public void dragEnter(DropTargetEvent event) {
		dragOver(event);
	}

	@Override
	public void dragOver(DropTargetEvent event) {
		if (!isOfFiles(event)) {
			Row row = dragged(event).isPresent() ? row(event) : null;
			event.detail = row == null ? DND.DROP_NONE : DND.DROP_COPY;
			event.feedback = DND.FEEDBACK_SCROLL;
			if (row != null && !row.layer().equals(canvas.currentLayer())) {
				// the row that is marked shows which layer would take it
				canvas.setCurrent(new Row(row.layer(), null));
			}
		}
	}

	@Override
	public void drop(DropTargetEvent event) {
		Row row = row(event);
		if (row != null) {
			dragged(event).ifPresent(drop -> drop.dropped(canvas.bench(), row.layer()));
		}
	}
}
