package org.frisket.ui.bench;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Control;
import org.frisket.geometry.Point;
import org.frisket.ui.bench.internal.imports.ArtImport;

/** Files dragged from outside the program: those that can be read are imported into the job on a bench. */
public final class FilesDrop {

	private FilesDrop() {
	}

	/**
	 * Takes files that are let go over a control; they stay where they are in their files.
	 *
	 * @param bench the one whose job they come into; may give null
	 */
	public static void onto(Control control, Supplier<JobOnBench> bench) {
		DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_DEFAULT);
		target.setTransfer(FileTransfer.getInstance());
		target.addDropListener(new DropTargetAdapter() {

			@Override
			public void dragEnter(DropTargetEvent event) {
				event.detail = bench.get() == null ? DND.DROP_NONE : DND.DROP_COPY;
			}

			@Override
			public void dragOperationChanged(DropTargetEvent event) {
				dragEnter(event);
			}

			@Override
			public void drop(DropTargetEvent event) {
				if (bench.get() != null) {
					take(bench.get(), event.data, Optional.empty());
				}
			}
		});
	}

	/** @param data as {@link FileTransfer} brings it */
	public static void take(JobOnBench bench, Object data, Optional<Point> place) {
		if (!(data instanceof String[] names)) {
			return;
		}
		List<Path> files = Arrays.stream(names).map(Path::of).filter(ArtImport::isArt).toList();
		if (!files.isEmpty()) {
			bench.importFiles(files, place);
		}
	}
}
