package org.frisket.ui.bench.internal.editor;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.editing.ReloadJob;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.UnreadableJobException;
import org.frisket.ui.bench.internal.files.Autosave;
import org.frisket.ui.bench.internal.files.BenchPreferences;
import org.frisket.ui.bench.internal.files.FileStamp;
import org.frisket.ui.bench.internal.files.Recovery;
import org.frisket.ui.bench.internal.files.Unsaved;

/** All that an editor has to do with its job's file: saving, recovery copies, and what other programs do to it. */
final class EditorFile {

	private final BenchEditor editor;
	private final NoticeBar notices;
	private final JobSaver saver;
	private final Autosave autosave;
	private final AutosaveStatus status;
	private final OutsideWatch watch;
	/** Null if the job is in a file, or in none yet. */
	private final EditorPlace place;

	EditorFile(BenchEditor editor, NoticeBar notices) {
		this.editor = editor;
		this.notices = notices;
		saver = new JobSaver(editor);
		Display display = notices.getDisplay();
		autosave = new Autosave(Recovery.store(), () -> tellStatus(display), editor.document()::base);
		status = new AutosaveStatus(display, autosave, editor.status()::showAutosave);
		watch = new OutsideWatch(editor, notices, this::reload);
		place = editor.document().place().map(each -> new EditorPlace(editor, notices, each)).orElse(null);
		if (editor.document().isRecovered()) {
			autosave.adopt(editor.document().origin());
			notices.show(place == null ? Messages.EditorFile_recovered : Messages.EditorFile_recoveredAtPlace,
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
		if (place == null) {
			saver.save(monitor);
		} else if (!place.save() && monitor != null) {
			monitor.setCanceled(true);
		}
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
	 * Takes the job over as its file has it now, which is one edit that can be undone, and is then as saved. A job
	 * without a file is closed, and what was not saved of it given up.
	 */
	void reload() {
		if (place != null) {
			place.reload();
			return;
		}
		Unsaved origin = editor.document().origin();
		if (origin.original().isEmpty()) {
			editor.getSite().getPage().closeEditor(editor, false);
			return;
		}
		Path path = origin.original().get();
		Display display = notices.getDisplay();
		org.eclipse.core.runtime.jobs.Job.createSystem(Messages.EditorFile_reloading, (ICoreRunnable) monitor -> {
			// the stamp first: a change between the two is then noticed rather than missed
			FileStamp stamp = FileStamp.of(path);
			try {
				Job read = JobFile.load(path);
				tell(display, origin, () -> take(read, stamp));
			} catch (UnreadableJobException e) {
				tell(display, origin, () -> cannotReload(e.getMessage()));
			}
		}).schedule();
	}

	/** Unless the editor is closed meanwhile, or the job was saved. */
	private void tell(Display display, Unsaved origin, Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (!notices.isDisposed() && origin.equals(editor.document().origin())) {
					news.run();
				}
			});
		}
	}

	private void take(Job read, FileStamp stamp) {
		editor.typing().end(true);
		editor.onBench().edits().execute(new ReloadJob(editor.document().job(), read));
		editor.commandStack().markSaveLocation();
		editor.document().reloaded(stamp);
		notices.hide();
		watch.settled();
		editor.fileRelationChanged();
	}

	private void cannotReload(String reason) {
		notices.show(NLS.bind(Messages.EditorFile_notReloaded, reason),
				List.of(new NoticeBar.Choice(Messages.OutsideWatch_reload, this::reload),
						new NoticeBar.Choice(Messages.OutsideWatch_keep, watch::keep)));
	}

	/** Whether the editor is the one in front. */
	void setSeen(boolean seen) {
		status.setSeen(seen);
	}

	void close() {
		status.setSeen(false);
		watch.close();
		if (place != null) {
			place.close();
		}
		autosave.close();
	}
}
