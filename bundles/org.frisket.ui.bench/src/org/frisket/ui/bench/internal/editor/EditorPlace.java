package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.List;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.ReloadJob;
import org.frisket.model.JobFile;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.JobPlace.Held;
import org.frisket.ui.bench.PlacedBench;

/** All that an editor has to do with where its job is kept, if that is no file: keeping it, and what others do to it. */
final class EditorPlace implements PlacedBench {

	private final BenchEditor editor;
	private final NoticeBar notices;
	private final JobPlace place;
	private final Runnable unwatched;
	private boolean saving;

	EditorPlace(BenchEditor editor, NoticeBar notices, JobPlace place) {
		this.editor = editor;
		this.notices = notices;
		this.place = place;
		unwatched = place.watch(this);
	}

	void close() {
		unwatched.run();
	}

	/** What came of an attempt to keep the job, off the UI thread: one of them. */
	private record Outcome(Held kept, Held theirs) {
	}

	/** Keeps the job while the window waits and stays alive. Whether it is kept in the end. */
	boolean save() {
		editor.typing().end(true);
		Outcome outcome;
		try {
			outcome = attempt(JobFile.toBytes(editor.document().job()), mark());
		} catch (IOException e) {
			return ask(e) && save();
		}
		if (outcome.kept() == null) {
			return place.overtaken(this, outcome.theirs());
		}
		editor.document().keptAt(outcome.kept());
		editor.kept();
		return true;
	}

	private Outcome attempt(byte[] content, String mark) throws IOException {
		Outcome[] outcome = new Outcome[1];
		saving = true;
		try {
			PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
				try {
					outcome[0] = outcome(content, mark);
				} catch (IOException e) {
					throw new InvocationTargetException(e);
				}
			});
		} catch (InvocationTargetException e) {
			throw e.getCause() instanceof IOException trouble ? trouble : new IOException(e.getCause());
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			throw new IOException(e);
		} finally {
			saving = false;
		}
		return outcome[0];
	}

	private Outcome outcome(byte[] content, String mark) throws IOException {
		try {
			return new Outcome(place.save(content, mark), null);
		} catch (JobPlace.OvertakenException quicker) {
			return new Outcome(null, place.load());
		}
	}

	/** Whether it is to be tried again. */
	private boolean ask(IOException trouble) {
		return MessageDialog.open(MessageDialog.ERROR, shell(), Messages.JobSaver_couldNotSaveTitle,
				NLS.bind(Messages.JobSaver_couldNotSave, trouble.getMessage()), SWT.NONE, Messages.JobSaver_again,
				Messages.JobSaver_cancel) == 0;
	}

	/** Shows what is held now, whatever is on the bench; off the UI thread first. */
	void reload() {
		Display display = notices.getDisplay();
		Job.createSystem(Messages.EditorFile_reloading, (ICoreRunnable) monitor -> {
			try {
				Held held = place.load();
				display.asyncExec(() -> takeIfOpen(held));
			} catch (IOException e) {
				display.asyncExec(() -> cannotReload(e.getMessage()));
			}
		}).schedule();
	}

	private void takeIfOpen(Held held) {
		if (!isClosed()) {
			try {
				take(held);
			} catch (IOException e) {
				cannotReload(e.getMessage());
			}
		}
	}

	private void cannotReload(String reason) {
		if (!isClosed()) {
			tell(NLS.bind(Messages.EditorFile_notReloaded, reason),
					List.of(new Choice(Messages.JobSaver_again, this::reload), new Choice(Messages.OutsideWatch_keep, () -> {
						// it is there already
					})));
		}
	}

	@Override
	public org.frisket.model.Job job() throws IOException {
		return JobFile.load(JobFile.toBytes(editor.document().job()), editor.getPartName());
	}

	@Override
	public byte[] base() {
		return editor.document().base();
	}

	@Override
	public String mark() {
		return editor.document().origin().mark();
	}

	@Override
	public boolean isDirty() {
		return editor.isDirty();
	}

	@Override
	public boolean isSaving() {
		return saving;
	}

	@Override
	public boolean isClosed() {
		return notices.isDisposed();
	}

	@Override
	public Shell shell() {
		return editor.getSite().getShell();
	}

	@Override
	public void tell(String text, List<Choice> choices) {
		notices.show(text, choices.stream().map(each -> new NoticeBar.Choice(each.label(), each.action())).toList());
	}

	@Override
	public void hush() {
		notices.hide();
	}

	@Override
	public void say(String text) {
		editor.getEditorSite().getActionBars().getStatusLineManager().setMessage(text);
	}

	@Override
	public void take(Held held) throws IOException {
		org.frisket.model.Job read = held.job();
		editor.typing().end(true);
		editor.onBench().edits().execute(ReloadJob.taken(editor.document().job(), read));
		editor.document().keptAt(held);
		editor.kept();
	}

	@Override
	public boolean merge(org.frisket.model.Job merged, Held held) {
		editor.typing().end(true);
		editor.onBench().edits().execute(ReloadJob.merged(editor.document().job(), merged));
		editor.document().heldAt(held);
		editor.fileRelationChanged();
		return save();
	}
}
