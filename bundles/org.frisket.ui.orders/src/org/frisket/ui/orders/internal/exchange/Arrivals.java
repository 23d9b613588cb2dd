package org.frisket.ui.orders.internal.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchWindow;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.orders.Entry;
import org.frisket.orders.intake.OrderFile;
import org.frisket.prepare.pictures.LinkedPictures;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.Words;

/** Files that somebody brings to the order book. */
public final class Arrivals {

	private Arrivals() {
	}

	/** Has files that are dropped on a control taken in. */
	public static void onDrop(Control control, IWorkbenchWindow window) {
		DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_MOVE | DND.DROP_DEFAULT);
		target.setTransfer(new Transfer[] { FileTransfer.getInstance() });
		target.addDropListener(new DropTargetAdapter() {

			@Override
			public void dragEnter(DropTargetEvent event) {
				// what is moved would be deleted where it comes from
				event.detail = DND.DROP_COPY;
			}

			@Override
			public void dragOperationChanged(DropTargetEvent event) {
				event.detail = DND.DROP_COPY;
			}

			@Override
			public void drop(DropTargetEvent event) {
				if (event.data instanceof String[] names) {
					List<Path> files = List.of(names).stream().map(Path::of).toList();
					// whoever drags waits until this returns
					control.getDisplay().asyncExec(() -> takeIn(window, files));
				}
			}
		});
	}

	/** A table of orders is shown first; jobs are taken in at once, all or none. */
	public static void takeIn(IWorkbenchWindow window, List<Path> files) {
		if (files.size() == 1 && OrderFile.isTable(files.get(0))) {
			new IntakeDialog(window.getShell(), files.get(0)).open();
		} else if (!files.isEmpty() && files.stream().allMatch(Arrivals::isJob)) {
			jobs(window, files);
		} else if (!files.isEmpty()) {
			refused(window, Messages.Arrivals_kinds);
		}
	}

	private static boolean isJob(Path file) {
		return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(JobFile.ENDING);
	}

	/** What came of files of jobs. @param left pictures that could not be kept, a sentence each */
	private record Taken(List<Entry> jobs, List<String> left) {
	}

	private static void jobs(IWorkbenchWindow window, List<Path> files) {
		OrderDesk.get().change(Messages.Arrivals_jobs, () -> {
			List<Job> jobs = new ArrayList<>();
			List<String> left = new ArrayList<>();
			for (Path file : files) {
				Job job = JobFile.load(file);
				LinkedPictures.keep(job).forEach(each -> left.add(file + ": " + each)); //$NON-NLS-1$
				jobs.add(job);
			}
			return new Taken(OrderDesk.book().takeIn(jobs, false, OrderDesk.person()), left);
		}, taken -> tell(window, taken), reason -> refused(window, reason));
	}

	private static void tell(IWorkbenchWindow window, Taken taken) {
		if (window.getShell() == null || window.getShell().isDisposed()) {
			return;
		}
		StatusWords.say(window, taken.jobs().size() == 1 ? NLS.bind(Messages.Arrivals_one, taken.jobs().get(0).number())
				: NLS.bind(Messages.Arrivals_several, taken.jobs().stream().map(job -> Long.toString(job.number()))
						.collect(Collectors.joining(", ")))); //$NON-NLS-1$
		if (!taken.left().isEmpty()) {
			MessageDialog.openWarning(window.getShell(), Messages.Arrivals_pictures, String.join("\n", taken.left())); //$NON-NLS-1$
		}
	}

	private static void refused(IWorkbenchWindow window, String reason) {
		if (window.getShell() != null && !window.getShell().isDisposed()) {
			MessageDialog.openError(window.getShell(), Messages.Arrivals_refused, Words.sentence(reason));
		}
	}
}
