package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.model.JobFile;

/** Asks in which file a job is to be kept, and what to do where it cannot be. */
final class SavePlace {

	/** What to do about a job that could not be kept. */
	enum WayOut {
		SAVE_AS, AGAIN, NONE
	}

	private final BenchEditor editor;

	SavePlace(BenchEditor editor) {
		this.editor = editor;
	}

	/** A file to write, or to write over; empty for none. */
	Optional<Path> ask() {
		FileDialog dialog = new FileDialog(shell(), SWT.SAVE);
		dialog.setText(editor.document().place().isLeftForFiles() ? Messages.SavePlace_dialogTitle
				: Messages.SavePlace_copyTitle);
		dialog.setFilterExtensions(new String[] { "*" + JobFile.ENDING }); //$NON-NLS-1$
		dialog.setFilterNames(new String[] { Messages.SavePlace_jobFiles });
		dialog.setOverwrite(true);
		Path suggested = suggested();
		dialog.setFilterPath(suggested.getParent().toString());
		dialog.setFileName(suggested.getFileName().toString());
		String chosen = dialog.open();
		if (chosen == null) {
			return Optional.empty();
		}
		if (chosen.endsWith(JobFile.ENDING)) {
			return Optional.of(Path.of(chosen));
		}
		return Optional.of(Path.of(chosen + JobFile.ENDING)).filter(this::mayWrite);
	}

	/** The dialog has asked about the name as it was typed only. */
	private boolean mayWrite(Path whole) {
		return !Files.exists(whole) || ask(MessageDialog.WARNING, Messages.SavePlace_existsTitle,
				NLS.bind(Messages.SavePlace_exists, whole), Messages.SavePlace_replace) == 0;
	}

	private Path suggested() {
		return editor.document().path().orElseGet(() -> JobNames.folder()
				.resolve(JobNames.fileName(editor.document().job(), editor.getPartName()) + JobFile.ENDING));
	}

	/** Says what went wrong, and that nothing is lost. */
	WayOut askAfter(IOException trouble) {
		int answer = ask(MessageDialog.ERROR, Messages.SavePlace_couldNotSaveTitle,
				NLS.bind(Messages.SavePlace_couldNotSave, trouble.getMessage()), Messages.SavePlace_saveAs,
				Messages.SavePlace_again);
		return answer >= 0 && answer < WayOut.values().length ? WayOut.values()[answer] : WayOut.NONE;
	}

	/** The place of the label that was chosen; another number if none was. */
	private int ask(int kind, String title, String text, String... labels) {
		String[] buttons = new String[labels.length + 1];
		System.arraycopy(labels, 0, buttons, 0, labels.length);
		buttons[labels.length] = Messages.SavePlace_cancel;
		return MessageDialog.open(kind, shell(), title, text, SWT.NONE, buttons);
	}

	private Shell shell() {
		return editor.getSite().getShell();
	}
}
