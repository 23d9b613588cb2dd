package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.model.JobFile;
import org.frisket.ui.bench.internal.files.KeepFontsJob;
import org.frisket.ui.bench.internal.files.RecentJobs;

/** Saves the job of an editor, and asks the user where there is something to decide. */
final class JobSaver {

	private static final int FIRST = 0;
	private static final int SECOND = 1;

	private final BenchEditor editor;

	JobSaver(BenchEditor editor) {
		this.editor = editor;
	}

	/** Saves to the job's own file; cancels the monitor if the job is not saved in the end. */
	void save(IProgressMonitor monitor) {
		if (!save() && monitor != null) {
			monitor.setCanceled(true);
		}
	}

	private boolean save() {
		BenchDocument document = editor.document();
		Path path = document.path().orElse(null);
		if (path == null) {
			return saveAs();
		}
		if (document.outsideChange() != OutsideChange.CHANGED) {
			return saveTo(path);
		}
		int answer = ask(MessageDialog.WARNING, Messages.JobSaver_changedOutsideTitle,
				NLS.bind(Messages.JobSaver_changedOutside, path), Messages.JobSaver_replace, Messages.JobSaver_saveAs);
		return answer == FIRST ? saveTo(path) : answer == SECOND && saveAs();
	}

	/** Asks for a place first. Whether the job is saved then. */
	boolean saveAs() {
		FileDialog dialog = new FileDialog(shell(), SWT.SAVE);
		dialog.setText(editor.document().place().isPresent() ? Messages.JobSaver_copyTitle : Messages.JobSaver_dialogTitle);
		dialog.setFilterExtensions(new String[] { "*" + JobFile.ENDING }); //$NON-NLS-1$
		dialog.setFilterNames(new String[] { Messages.JobSaver_jobFiles });
		dialog.setOverwrite(true);
		Path suggested = suggested();
		dialog.setFilterPath(suggested.getParent().toString());
		dialog.setFileName(suggested.getFileName().toString());
		String chosen = dialog.open();
		if (chosen == null) {
			return false;
		}
		if (chosen.endsWith(JobFile.ENDING)) {
			return saveChosen(Path.of(chosen));
		}
		Path whole = Path.of(chosen + JobFile.ENDING);
		return mayWrite(whole) && saveChosen(whole);
	}

	/** A job that is kept elsewhere stays there: the file is a copy to give away. */
	private boolean saveChosen(Path path) {
		return editor.document().place().isPresent() ? saveCopy(path) : saveTo(path);
	}

	private boolean saveCopy(Path path) {
		try {
			JobFile.save(editor.document().job(), path);
		} catch (IOException e) {
			return askAfter(e, path);
		}
		editor.getEditorSite().getActionBars().getStatusLineManager()
				.setMessage(NLS.bind(Messages.JobSaver_copied, path, editor.getPartName()));
		return true;
	}

	/** The dialog has asked about the name as it was typed only. */
	private boolean mayWrite(Path whole) {
		return !Files.exists(whole) || ask(MessageDialog.WARNING, Messages.JobSaver_existsTitle,
				NLS.bind(Messages.JobSaver_exists, whole), Messages.JobSaver_replace) == FIRST;
	}

	private Path suggested() {
		return editor.document().path().orElseGet(() -> JobNames.folder()
				.resolve(JobNames.fileName(editor.document().job(), editor.getPartName()) + JobFile.ENDING));
	}

	/** Saves without asking, and shows the file from now on. What goes wrong is told, with ways out. */
	boolean saveTo(Path path) {
		try {
			editor.document().save(path);
		} catch (IOException e) {
			return askAfter(e, path);
		}
		RecentJobs.shared().add(path);
		editor.saved(path);
		new KeepFontsJob(editor.document().snapshot(), this::tellLater).schedule();
		return true;
	}

	/** From another thread. */
	private void tellLater(String message) {
		Control bench = editor.viewer().getControl();
		bench.getDisplay().asyncExec(() -> {
			if (!bench.isDisposed()) {
				editor.say(message);
			}
		});
	}

	private boolean askAfter(IOException trouble, Path path) {
		int answer = ask(MessageDialog.ERROR, Messages.JobSaver_couldNotSaveTitle,
				NLS.bind(Messages.JobSaver_couldNotSave, trouble.getMessage()), Messages.JobSaver_saveAs,
				Messages.JobSaver_again);
		return answer == FIRST ? saveAs() : answer == SECOND && saveChosen(path);
	}

	/** The place of the label that was chosen; another number if none was. */
	private int ask(int kind, String title, String text, String... labels) {
		String[] buttons = new String[labels.length + 1];
		System.arraycopy(labels, 0, buttons, 0, labels.length);
		buttons[labels.length] = Messages.JobSaver_cancel;
		return MessageDialog.open(kind, shell(), title, text, SWT.NONE, buttons);
	}

	private Shell shell() {
		return editor.getSite().getShell();
	}
}
