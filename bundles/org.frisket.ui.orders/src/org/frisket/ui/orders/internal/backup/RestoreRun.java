package org.frisket.ui.orders.internal.backup;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.orders.work.backup.BookContents;
import org.frisket.orders.work.backup.Restored;
import org.frisket.orders.work.backup.StudioBackup;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.keep.OpenBookJobs;

/** Brings a backup back, once it was said what it replaces and where that is kept. */
public final class RestoreRun {

	private final Shell shell;
	private final StudioFolder studio = Studio.folder();
	private final StudioBackup backup = new StudioBackup(studio);

	public RestoreRun(Shell shell) {
		this.shell = shell;
	}

	public void askForFile() {
		FileDialog dialog = BackupRun.fileDialog(shell, SWT.OPEN);
		dialog.setText(Messages.RestoreRun_title);
		String chosen = dialog.open();
		if (chosen != null) {
			restore(Path.of(chosen));
		}
	}

	/** What is looked at before anything is asked. */
	private record Plan(BookContents then, BookContents now, boolean shared) {
	}

	public void restore(Path file) {
		Optional<Plan> plan = Progress.run(shell, Messages.RestoreRun_reading, Messages.RestoreRun_refused,
				monitor -> new Plan(backup.in(file, monitor), backup.here(), Databases.address(studio).isPresent()));
		if (plan.isPresent() && isWanted(file, plan.get())) {
			Optional<Restored> restored = Progress.run(shell, Messages.RestoreRun_restoring, Messages.RestoreRun_refused,
					monitor -> backup.restore(file, true, monitor));
			// also if only the files failed
			OrderDesk.get().bookIsReplaced();
			restored.ifPresent(done -> MessageDialog.openInformation(shell, Messages.RestoreRun_title,
					done.kept().map(kept -> NLS.bind(Messages.RestoreRun_doneKept, plan.get().then().jobs(), kept))
							.orElseGet(() -> NLS.bind(Messages.RestoreRun_done, plan.get().then().jobs()))));
		}
	}

	private boolean isWanted(Path file, Plan plan) {
		String words = RestoreWords.of(file, plan.then(), plan.now(), backup.beforeRestore(), plan.shared(),
				OpenBookJobs.open(), OpenBookJobs.dirty());
		return new MessageDialog(shell, Messages.RestoreRun_title, null, words,
				plan.now().fresh() ? MessageDialog.QUESTION : MessageDialog.WARNING, 1, Messages.RestoreRun_restore,
				Messages.RestoreRun_cancel).open() == 0;
	}
}
