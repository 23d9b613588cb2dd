package org.frisket.ui.bench.internal.editor;

import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.statushandlers.StatusManager;
import org.frisket.model.Job;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.internal.files.Autosave;
import org.frisket.ui.bench.internal.files.BenchPreferences;
import org.frisket.ui.bench.internal.files.Recovery;

/** All that an editor has to do with its job's file: saving, recovery copies, and what other programs do to it. */
final class EditorFile {

	private final BenchEditor editor;
	private final JobSaver saver;
	private final Autosave autosave;
	private final AutosaveStatus status;
	private final OutsideWatch watch;

	EditorFile(BenchEditor editor, NoticeBar notices) {
		this.editor = editor;
		saver = new JobSaver(editor);
		Display display = notices.getDisplay();
		autosave = new Autosave(Recovery.store(), () -> tellStatus(display));
		status = new AutosaveStatus(display, autosave, editor.status()::showAutosave);
		watch = new OutsideWatch(editor, notices, this::reload);
		if (editor.document().isRecovered()) {
			autosave.adopt(editor.document().origin());
			notices.show(Messages.EditorFile_recovered,
					List.of(new NoticeBar.Choice(Messages.EditorFile_keepRecovered, () -> {
						// they are here already
					}), new NoticeBar.Choice(Messages.EditorFile_discardRecovered, this::reload)));
		}
	}

	private void tellStatus(Display display) {
		if (!display.isDisposed()) {
			display.asyncExec(status);
		}
	}

	JobSaver saver() {
		return saver;
	}

	void save(IProgressMonitor monitor) {
		saver.save(monitor);
	}

	/**
	 * The job, or how it stands to its file, has changed.
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

	/**
	 * Shows the job as its file has it, as large and at the same place as now, and gives up what was not saved; a job
	 * without a file is closed.
	 */
	void reload() {
		BenchCanvas.Look look = editor.canvas().look();
		IWorkbenchPage page = editor.getSite().getPage();
		IEditorInput input = editor.getEditorInput();
		page.closeEditor(editor, false);
		if (input instanceof JobInput) {
			try {
				if (page.openEditor(input, Bench.EDITOR_ID) instanceof BenchEditor again && again.canvas() != null) {
					again.canvas().beginWith(look);
				}
			} catch (PartInitException e) {
				StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
			}
		}
	}

	/** Whether the editor is the one in front. */
	void setSeen(boolean seen) {
		status.setSeen(seen);
	}

	void close() {
		status.setSeen(false);
		watch.close();
		autosave.close();
	}
}
