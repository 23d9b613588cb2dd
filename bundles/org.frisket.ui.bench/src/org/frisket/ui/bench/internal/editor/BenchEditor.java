package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.gef.ui.parts.GraphicalEditor;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.contexts.IContextService;
import org.frisket.editing.EditExecutor;
import org.frisket.model.JobFile;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.picture.JobPicture;

/**
 * A job on the bench. Edits of every origin run through its one command stack: ask it for an {@link EditExecutor}. A
 * file that cannot be read gets a page that says why.
 */
public final class BenchEditor extends GraphicalEditor implements PictureJob.Client {

	private static final int SAVE_AS = 1;

	private BenchDocument document;
	private String trouble;
	private MessagePage messagePage;
	private BenchCanvas canvas;
	private PictureJob pictures;
	private boolean complete;

	public BenchEditor() {
		setEditDomain(new DefaultEditDomain(this));
	}

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		if (!(input instanceof JobInput job)) {
			throw new PartInitException(NLS.bind(Messages.BenchEditor_wrongInput, input.getName()));
		}
		super.init(site, input);
		setPartName(job.getName());
		try {
			document = BenchDocument.open(job.path());
		} catch (IOException e) {
			trouble = e.getMessage();
		}
		site.getService(IContextService.class).activateContext(Bench.CONTEXT_ID);
	}

	@Override
	protected void createActions() {
		// no GEF actions: commands and handlers do all, so that each can be given a key
	}

	@Override
	public void createPartControl(Composite parent) {
		if (document == null) {
			messagePage = new MessagePage(parent, Messages.BenchEditor_couldNotOpen, trouble,
					Messages.BenchEditor_couldNotOpenAdvice);
			return;
		}
		super.createPartControl(parent);
		pictures = new PictureJob(parent.getDisplay(), this);
		getCommandStack().addCommandStackEventListener(this::stackEvent);
		pictures.request(document.snapshot());
	}

	@Override
	protected void configureGraphicalViewer() {
		super.configureGraphicalViewer();
		canvas = new BenchCanvas(getGraphicalViewer(), this::updateStatus);
		getGraphicalViewer().addSelectionChangedListener(event -> updateStatus());
	}

	@Override
	protected void initializeGraphicalViewer() {
		getGraphicalViewer().setContents(document);
	}

	private void stackEvent(CommandStackEvent event) {
		if (event.isPostChangeEvent()) {
			complete = false;
			pictures.request(document.snapshot());
			firePropertyChange(PROP_DIRTY);
			UndoState.announce(getSite());
			updateStatus();
		}
	}

	@Override
	public void pictureMade(JobPicture picture, boolean allFindings) {
		complete = allFindings;
		document.setPicture(picture);
		canvas.fitOnce();
		updateStatus();
	}

	@Override
	public void pictureFailed(String message) {
		getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(message);
	}

	/** The job that is shown; null if the file could not be read. */
	public BenchDocument document() {
		return document;
	}

	/** Whether the picture is up to date with the job, findings included. */
	public boolean isUpToDate() {
		return complete;
	}

	/** What the page says that stands in place of a job that could not be read; null if the job is there. */
	public String trouble() {
		return messagePage == null ? null : messagePage.message();
	}

	/** The viewer; null if the file could not be read. */
	public GraphicalViewer viewer() {
		return getGraphicalViewer();
	}

	/** Null if the file could not be read. */
	public CanvasZoom zoom() {
		return canvas == null ? null : canvas.zoom();
	}

	/** Shows the whole sheet. */
	public void fit() {
		if (canvas != null) {
			canvas.fit();
		}
	}

	public CommandStack commandStack() {
		return getCommandStack();
	}

	void updateStatus() {
		if (getEditorSite().getActionBarContributor() instanceof BenchStatusLine line) {
			line.show(this, canvas == null ? BenchStatus.NOTHING : status());
		}
	}

	private BenchStatus status() {
		return BenchStatus.of(canvas.pointer(), Selection.parts(getGraphicalViewer()), document.picture(), complete,
				canvas.zoom().scale());
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		if (document == null) {
			return;
		}
		if (!document.isChangedOutside()) {
			saveTo(document.path(), monitor);
			return;
		}
		String text = NLS.bind(Messages.BenchEditor_changedOutside, document.path());
		int answer = MessageDialog.open(MessageDialog.WARNING, getSite().getShell(),
				Messages.BenchEditor_changedOutsideTitle, text, SWT.NONE, Messages.BenchEditor_overwrite,
				Messages.BenchEditor_saveAs, IDialogConstants.CANCEL_LABEL);
		if (answer == 0) {
			saveTo(document.path(), monitor);
		} else if (answer == SAVE_AS) {
			doSaveAs();
		} else if (monitor != null) {
			monitor.setCanceled(true);
		}
	}

	@Override
	public boolean isSaveAsAllowed() {
		return document != null;
	}

	@Override
	public void doSaveAs() {
		FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
		dialog.setFilterExtensions(new String[] { "*" + JobFile.ENDING }); //$NON-NLS-1$
		dialog.setFilterNames(new String[] { Messages.BenchEditor_jobFiles });
		dialog.setFilterPath(String.valueOf(document.path().getParent()));
		dialog.setFileName(document.path().getFileName().toString());
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen != null) {
			String name = chosen.endsWith(JobFile.ENDING) ? chosen : chosen + JobFile.ENDING;
			saveTo(Path.of(name), new NullProgressMonitor());
		}
	}

	/** Saves without asking, and shows the file from now on. What goes wrong is shown to the user. */
	public void saveTo(Path path, IProgressMonitor monitor) {
		try {
			document.save(path);
			getCommandStack().markSaveLocation();
			setInput(new JobInput(path));
			setPartName(getEditorInput().getName());
			firePropertyChange(PROP_INPUT);
			firePropertyChange(PROP_DIRTY);
		} catch (IOException e) {
			if (monitor != null) {
				monitor.setCanceled(true);
			}
			MessageDialog.openError(getSite().getShell(), Messages.BenchEditor_couldNotSaveTitle, e.getMessage());
		}
	}

	@Override
	@SuppressWarnings({ "rawtypes", "unchecked" })
	public Object getAdapter(Class type) {
		if (type == EditExecutor.class) {
			return document == null ? null : (EditExecutor) edit -> getCommandStack().execute(new EditCommand(edit));
		}
		return super.getAdapter(type);
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
		if (pictures != null) {
			pictures.close();
		}
		super.dispose();
	}
}
