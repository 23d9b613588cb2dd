package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.frisket.editing.EditExecutor;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.internal.files.Recovery;
import org.frisket.ui.bench.internal.imports.ArtImport;

/**
 * A job on the bench. Edits of every origin run through its one command stack: ask it for an {@link EditExecutor}. A
 * job that cannot be read gets a page that says why.
 */
public final class BenchEditor extends BenchSurface {

	private BenchDocument document;
	private String trouble;
	private MessagePage messagePage;
	private NoticeBar notices;
	private EditorPlace place;
	private EditorCopies copies;
	private EditorStatus status;

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		super.init(site, input);
		setPartName(input.getName());
		JobPlace from = place(input);
		if (from == null) {
			throw new PartInitException(NLS.bind(Messages.BenchEditor_wrongInput, input.getName()));
		}
		try {
			document = BenchDocument.unsaved(from, Recovery.store()).orElse(null);
			if (document == null && !from.isFar()) {
				document = BenchDocument.of(from, from.load());
			}
		} catch (IOException e) {
			trouble = e.getMessage();
		}
	}

	private static JobPlace place(IEditorInput input) {
		return Adapters.adapt(input, JobPlace.class);
	}

	@Override
	public void createPartControl(Composite parent) {
		status = new EditorStatus(this, parent.getDisplay());
		if (document != null) {
			lay(parent);
		} else if (trouble == null) {
			new JobArrival(this, parent, place(getEditorInput())).begin();
		} else {
			show(new MessagePage(parent, Messages.BenchEditor_couldNotOpen, trouble,
					Messages.BenchEditor_couldNotOpenAdvice));
		}
	}

	/** Shows a page in place of a job. */
	void show(MessagePage page) {
		messagePage = page;
	}

	/** The job has come that was waited for. */
	void arrived(BenchDocument loaded, Composite parent) {
		document = loaded;
		messagePage = null;
		lay(parent);
		setPartName(getEditorInput().getName());
		firePropertyChange(PROP_INPUT);
		firePropertyChange(PROP_DIRTY);
		if (getSite().getPage().getActiveEditor() == this) {
			status.setInFront(true);
		}
		if (getSite().getPage().getActivePart() == this) {
			setFocus();
		}
	}

	@Override
	void lay(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
		notices = new NoticeBar(page);
		copies = new EditorCopies(this, parent.getDisplay());
		super.lay(notices.roomBelow());
		place = new EditorPlace(this, notices);
	}

	@Override
	void changed(Job snapshot) {
		copies.changed(snapshot);
		firePropertyChange(PROP_DIRTY);
	}

	@Override
	public void say(String message) {
		getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(message);
	}

	@Override
	void takeIn(List<Path> files, Optional<Point> at) {
		ArtImport.into(this, files, at.orElse(null));
	}

	@Override
	public BenchDocument document() {
		return document;
	}

	/** What the page says that stands in place of a job that could not be read; null if the job is there. */
	public String trouble() {
		return messagePage == null ? null : messagePage.message();
	}

	/** Null if the job could not be read. */
	EditorCopies copies() {
		return copies;
	}

	@Override
	EditorStatus status() {
		return status;
	}

	/** What the line above the bench says; empty if nothing. */
	public String notice() {
		return notices == null ? "" : notices.text(); //$NON-NLS-1$
	}

	@Override
	public boolean isDirty() {
		return document != null && (document.isUnlikeHeld() || super.isDirty());
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		if (place != null) {
			calledOff(!place.save(), monitor);
		}
	}

	@Override
	public boolean isSaveAsAllowed() {
		return document != null;
	}

	@Override
	public void doSaveAs() {
		place.saveAs();
	}

	/** Saves without asking, and shows the file from now on. What goes wrong is shown to the user. */
	public void saveTo(Path path, IProgressMonitor monitor) {
		calledOff(!place.saveTo(path), monitor);
	}

	private static void calledOff(boolean is, IProgressMonitor monitor) {
		if (is && monitor != null) {
			monitor.setCanceled(true);
		}
	}

	/** The job is what is held where it is kept. @param moved whether that is another file than before */
	void kept(boolean moved) {
		getCommandStack().markSaveLocation();
		notices.hide();
		if (moved) {
			setInput(new JobInput(document.path().orElseThrow()));
			firePropertyChange(PROP_INPUT);
		}
		setPartName(getEditorInput().getName());
		standingChanged();
	}

	/** How the job stands to what is held of it is not what it was. */
	void standingChanged() {
		changed(document.snapshot());
	}

	@Override
	@SuppressWarnings({ "rawtypes", "unchecked" })
	public Object getAdapter(Class type) {
		if (onBench() == null || type != JobOnBench.class && type != EditExecutor.class) {
			return super.getAdapter(type);
		}
		return type == JobOnBench.class ? onBench() : onBench().edits();
	}

	@Override
	public void setFocus() {
		if (messagePage != null) {
			messagePage.setFocus();
		} else {
			super.setFocus();
		}
	}

	@Override
	public void dispose() {
		if (place != null) {
			place.close();
			copies.close();
		}
		super.dispose();
		if (status != null) {
			status.close();
		}
	}
}
