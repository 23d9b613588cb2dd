package org.frisket.ui.bench.internal.editor;

import java.util.List;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.frisket.ui.bench.internal.files.FileStamp;
import org.frisket.ui.bench.internal.files.Unsaved;

/**
 * Looks whether another program has changed or removed the file of an open job, whenever the user comes back to it, and
 * says so with what can be done.
 */
final class OutsideWatch implements IPartListener2 {

	private final BenchEditor editor;
	private final NoticeBar notices;
	private final Runnable reload;
	private final Shell shell;
	private final Listener shellActivated = event -> look();
	private OutsideChange told = OutsideChange.NONE;

	/** @param reload takes the job over as its file has it */
	OutsideWatch(BenchEditor editor, NoticeBar notices, Runnable reload) {
		this.editor = editor;
		this.reload = reload;
		this.notices = notices;
		shell = notices.getShell();
		editor.getSite().getPage().addPartListener(this);
		shell.addListener(SWT.Activate, shellActivated);
	}

	void close() {
		editor.getSite().getPage().removePartListener(this);
		if (!shell.isDisposed()) {
			shell.removeListener(SWT.Activate, shellActivated);
		}
	}

	@Override
	public void partActivated(IWorkbenchPartReference part) {
		if (part.getPart(false) == editor) {
			look();
		}
	}

	/** Off the UI thread: a folder on the network may take its time to answer. */
	private void look() {
		Unsaved origin = editor.document().origin();
		if (origin.original().isEmpty()) {
			return;
		}
		Display display = shell.getDisplay();
		Job look = Job.createSystem(Messages.OutsideWatch_job, (ICoreRunnable) monitor -> {
			FileStamp now = FileStamp.of(origin.original().get());
			if (!display.isDisposed()) {
				display.asyncExec(() -> found(origin, now));
			}
		});
		look.schedule();
	}

	private void found(Unsaved origin, FileStamp now) {
		// saved meanwhile, or closed: it no longer holds
		if (notices.isDisposed() || !origin.equals(editor.document().origin())) {
			return;
		}
		OutsideChange change = OutsideChange.between(origin.stamp(), now);
		if (change != told) {
			told = change;
			tell(change, origin);
		}
	}

	private void tell(OutsideChange change, Unsaved origin) {
		String path = origin.original().get().toString();
		switch (change) {
		case NONE -> notices.hide();
		case CHANGED -> notices.show(
				NLS.bind(editor.isDirty() ? Messages.OutsideWatch_changedBoth : Messages.OutsideWatch_changed, path),
				List.of(new NoticeBar.Choice(Messages.OutsideWatch_reload, reload),
						new NoticeBar.Choice(Messages.OutsideWatch_keep, this::keep)));
		case REMOVED -> notices.show(NLS.bind(Messages.OutsideWatch_removed, path),
				List.of(new NoticeBar.Choice(Messages.OutsideWatch_saveAgain, this::saveAgain),
						new NoticeBar.Choice(Messages.OutsideWatch_keep, this::keep)));
		}
	}

	/** The job is as its file again. */
	void settled() {
		told = OutsideChange.NONE;
	}

	/** What is shown is to stand, whatever the file holds. */
	void keep() {
		told = OutsideChange.NONE;
		editor.document().keepDespiteFile();
		editor.fileRelationChanged();
	}

	private void saveAgain() {
		told = OutsideChange.NONE;
		editor.saveTo(editor.document().path().orElseThrow(), null);
	}
}
