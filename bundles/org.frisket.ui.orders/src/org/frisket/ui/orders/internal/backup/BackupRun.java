package org.frisket.ui.orders.internal.backup;

import java.nio.file.Path;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.orders.work.backup.BookContents;
import org.frisket.orders.work.backup.StudioBackup;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;

/** Writes the whole studio into a file. */
public final class BackupRun {

	private final Shell shell;

	public BackupRun(Shell shell) {
		this.shell = shell;
	}

	/** The window that asks for a file. */
	static FileDialog fileDialog(Shell shell, int style) {
		FileDialog dialog = new FileDialog(shell, style);
		dialog.setFilterExtensions(new String[] { "*.zip" }); //$NON-NLS-1$
		dialog.setFilterNames(new String[] { Messages.BackupRun_files });
		return dialog;
	}

	public void askForFile() {
		FileDialog dialog = fileDialog(shell, SWT.SAVE);
		dialog.setText(Messages.BackupRun_title);
		dialog.setFileName(new StudioBackup(Studio.folder()).name());
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen != null) {
			write(Path.of(chosen));
		}
	}

	public void write(Path file) {
		StudioFolder studio = Studio.folder();
		Progress.<BookContents>run(shell, Messages.BackupRun_writing, Messages.BackupRun_refused, monitor -> {
			StudioBackup backup = new StudioBackup(studio);
			backup.write(file, monitor);
			// what is in the file, and not what is hoped to be
			return backup.in(file, monitor);
		}).ifPresent(kept -> MessageDialog.openInformation(shell, Messages.BackupRun_title,
				NLS.bind(Messages.BackupRun_written, kept.jobs(), file)));
	}
}
