package org.frisket.ui.bench.internal.editor;

import org.eclipse.swt.widgets.Display;
import org.frisket.model.Job;
import org.frisket.ui.bench.internal.files.Autosave;
import org.frisket.ui.bench.internal.files.BenchPreferences;
import org.frisket.ui.bench.internal.files.Recovery;

/** The recovery copies of an editor's job, and what the status line says of them. */
final class EditorCopies {

	private final BenchEditor editor;
	private final Autosave autosave;
	private final AutosaveStatus status;

	EditorCopies(BenchEditor editor, Display display) {
		this.editor = editor;
		autosave = new Autosave(Recovery.store(), () -> tellStatus(display), editor.document()::base);
		status = new AutosaveStatus(display, autosave, editor.status()::showAutosave);
		if (editor.document().isRecovered()) {
			autosave.adopt(editor.document().origin());
		}
	}

	private void tellStatus(Display display) {
		if (!display.isDisposed()) {
			display.asyncExec(status);
		}
	}

	/**
	 * The job, or how it stands to what is held of it, has changed.
	 *
	 * @param snapshot a copy of the job that nobody changes any more
	 */
	void changed(Job snapshot) {
		if (editor.isDirty()) {
			autosave.changed(editor.document().origin(), snapshot, BenchPreferences.autosaveSeconds());
		} else {
			autosave.settled();
		}
	}

	/** Whether the editor is the one in front. */
	void setSeen(boolean seen) {
		status.setSeen(seen);
	}

	void close() {
		status.setSeen(false);
		autosave.close();
	}
}
