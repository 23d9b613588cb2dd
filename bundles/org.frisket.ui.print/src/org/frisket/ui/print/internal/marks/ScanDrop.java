package org.frisket.ui.print.internal.marks;

import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Control;

/** A scan that is dragged from outside the program onto the picture of its sheet. */
final class ScanDrop extends DropTargetAdapter {

	private final BooleanSupplier wanted;
	private final Consumer<Path> taken;

	private ScanDrop(BooleanSupplier wanted, Consumer<Path> taken) {
		this.wanted = wanted;
		this.taken = taken;
	}

	/** @param wanted whether a scan can be used now */
	static void onto(Control control, BooleanSupplier wanted, Consumer<Path> taken) {
		DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_DEFAULT);
		target.setTransfer(FileTransfer.getInstance());
		target.addDropListener(new ScanDrop(wanted, taken));
	}

	@Override
	public void dragEnter(DropTargetEvent event) {
		event.detail = wanted.getAsBoolean() ? DND.DROP_COPY : DND.DROP_NONE;
	}

	@Override
	public void dragOperationChanged(DropTargetEvent event) {
		dragEnter(event);
	}

	@Override
	public void drop(DropTargetEvent event) {
		if (event.data instanceof String[] names && names.length == 1 && wanted.getAsBoolean()) {
			taken.accept(Path.of(names[0]));
		}
	}
}
