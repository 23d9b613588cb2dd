package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.frisket.editing.Edit;
import org.frisket.editing.ReloadJob;
import org.frisket.model.JobFile;
import org.frisket.prepare.pictures.LinkedPictures;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.JobPlace.Held;
import org.frisket.ui.bench.PlacedBench;
import org.frisket.ui.bench.internal.places.FilePlace;

/** All that an editor has to do with where its job is kept: keeping it, and what others do to it. */
final class EditorPlace implements PlacedBench {

	private final BenchEditor editor;
	private final NoticeBar notices;
	private final SavePlace questions;
	private Runnable unwatched;
	private boolean saving;

	EditorPlace(BenchEditor editor, NoticeBar notices) {
		this.editor = editor;
		this.notices = notices;
		questions = new SavePlace(editor);
		unwatched = place().watch(this);
		if (document().isRecovered()) {
			tell(Messages.EditorPlace_recovered, List.of(new Choice(Messages.EditorPlace_keepRecovered, () -> {
				// they are here already
			}), new Choice(Messages.EditorPlace_discardRecovered, this::discard)));
		}
	}

	private BenchDocument document() {
		return editor.document();
	}

	private JobPlace place() {
		return document().place();
	}

	void close() {
		unwatched.run();
	}

	@Override
	public boolean save() {
		if (!place().canKeep()) {
			return saveAs();
		}
		JobPlace place = place();
		try {
			KeepAttempt attempt = attempt(place, mark());
			if (attempt.kept() == null) {
				return place.overtaken(this, attempt.theirs());
			}
			kept(place, attempt.kept());
			return true;
		} catch (IOException e) {
			return switch (questions.askAfter(e)) {
			case SAVE_AS -> saveAs();
			case AGAIN -> save();
			case NONE -> false;
			};
		}
	}

	@Override
	public boolean saveAs() {
		return questions.ask().filter(this::saveTo).isPresent();
	}

	/**
	 * Writes a file without asking, in place of what it holds. A job that is kept elsewhere stays there: the file is a
	 * copy to give away. What goes wrong is told, with ways out.
	 *
	 * @return whether there is nothing on the bench then that is not kept
	 */
	boolean saveTo(Path path) {
		FilePlace file = new FilePlace(path.toAbsolutePath().normalize());
		try {
			KeepAttempt attempt = attempt(file, file.mark());
			if (attempt.kept() == null) {
				// written by somebody else since a moment ago; it was agreed on to replace it
				return saveTo(path);
			}
			if (place().isLeftForFiles()) {
				kept(file, attempt.kept());
			} else {
				say(NLS.bind(Messages.SavePlace_copied, path, editor.getPartName()));
			}
			return !isDirty();
		} catch (IOException e) {
			return switch (questions.askAfter(e)) {
			case SAVE_AS -> saveAs();
			case AGAIN -> saveTo(path);
			case NONE -> false;
			};
		}
	}

	private KeepAttempt attempt(JobPlace where, String mark) throws IOException {
		editor.typing().end(true);
		saving = true;
		try {
			return KeepAttempt.at(where, JobFile.toBytes(LinkedPictures.at(document().job(),
					where.file().orElse(null))), mark);
		} finally {
			saving = false;
		}
	}

	/** The job is what is held there, which is its place from now on. */
	private void kept(JobPlace where, Held held) {
		boolean moved = !where.key().equals(place().key());
		document().keptAt(where, held);
		if (moved) {
			unwatched.run();
			unwatched = where.watch(this);
		}
		editor.kept(moved);
		where.kept(this, document().snapshot());
	}

	/** What was not saved is given up; a job that was kept nowhere is closed. */
	private void discard() {
		if (place().canKeep()) {
			reload();
		} else {
			editor.getSite().getPage().closeEditor(editor, false);
		}
	}

	@Override
	public void reload() {
		Display display = notices.getDisplay();
		JobPlace place = place();
		String mark = mark();
		Job.createSystem(Messages.EditorPlace_reloading, (ICoreRunnable) monitor -> {
			try {
				Held held = place.load();
				org.frisket.model.Job read = held.job(place.toolTip());
				ifAsBefore(mark, display, () -> take(read, held));
			} catch (IOException e) {
				ifAsBefore(mark, display, () -> cannotReload(e.getMessage()));
			}
		}).schedule();
	}

	/** Unless the bench is closed meanwhile, or the job was saved. */
	private void ifAsBefore(String mark, Display display, Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (!isClosed() && mark.equals(mark())) {
					news.run();
				}
			});
		}
	}

	private void cannotReload(String reason) {
		tell(NLS.bind(Messages.EditorPlace_notReloaded, reason),
				List.of(new Choice(Messages.EditorPlace_reload, this::reload),
				new Choice(Messages.EditorPlace_keep, () -> {
					// it is there already
				})));
	}

	@Override
	public void take(Held held) throws IOException {
		take(held.job(place().toolTip()), held);
	}

	private void take(org.frisket.model.Job read, Held held) {
		show(place().taking(document().job(), read));
		document().keptAt(place(), held);
		editor.kept(false);
	}

	@Override
	public boolean merge(org.frisket.model.Job merged, Held held) {
		show(ReloadJob.merged(document().job(), merged));
		document().heldAt(held);
		editor.standingChanged();
		return save();
	}

	private void show(Edit edit) {
		editor.typing().end(true);
		editor.onBench().edits().execute(edit);
	}

	@Override
	public void keepDespite(String mark) {
		document().keepDespite(mark);
		editor.standingChanged();
	}

	@Override
	public org.frisket.model.Job job() throws IOException {
		return JobFile.load(JobFile.toBytes(document().job()), editor.getPartName());
	}

	@Override
	public byte[] base() {
		return document().base();
	}

	@Override
	public String mark() {
		return document().mark();
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
	public Runnable whenBack(Runnable told) {
		return new BackWatch(editor, told)::close;
	}

	@Override
	public void tell(String text, List<Choice> choices) {
		notices.show(text, choices);
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
	public void warn(String text) {
		editor.say(text);
	}
}
