package org.frisket.ui.tests;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSource;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/** Files that are dragged in from outside, by the mouse. */
final class DraggedFiles {

	private DraggedFiles() {
	}

	/** From a window that offers them, as one of files does, to a place in a control. */
	static void drop(List<Path> files, Control target, int x, int y) {
		Shell offering = new Shell(target.getDisplay(), SWT.NO_TRIM | SWT.ON_TOP);
		try {
			offering.setBounds(4, 4, 60, 40);
			DragSource source = new DragSource(offering, DND.DROP_COPY);
			source.setTransfer(FileTransfer.getInstance());
			boolean[] let = new boolean[1];
			source.addDragListener(new DragSourceAdapter() {
				@Override
				public void dragSetData(DragSourceEvent event) {
					event.data = files.stream().map(Path::toString).toArray(String[]::new);
				}

				@Override
				public void dragFinished(DragSourceEvent event) {
					let[0] = true;
				}
			});
			offering.open();
			Screen.settle();
			Screen.moveTo(offering, 20, 20);
			Screen.pressButton();
			for (int step = 1; step <= 10; step++) {
				Screen.moveTo(offering, 20 + 2 * step, 20 + step);
			}
			for (int step = 5; step >= 0; step--) {
				Screen.moveTo(target, x - 3 * step, y - 3 * step);
				Screen.settle();
			}
			Screen.releaseButton();
			Screen.waitUntil("the files are let go", () -> let[0]);
		} finally {
			offering.dispose();
		}
	}
}
