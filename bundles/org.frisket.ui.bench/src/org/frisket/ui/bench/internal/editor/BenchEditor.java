package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.gef.ui.parts.GraphicalEditor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableEditor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.statushandlers.StatusManager;
import org.frisket.editing.EditExecutor;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.prepare.Finding;
import org.frisket.prepare.checks.Cure;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.UntitledInput;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.files.RecentJobs;
import org.frisket.ui.bench.internal.files.Recovery;
import org.frisket.ui.bench.internal.grips.SelectionGrips;
import org.frisket.ui.bench.internal.handlers.LookHandler;
import org.frisket.ui.bench.internal.looks.Looks;
import org.frisket.ui.bench.internal.nodes.NodeMode;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.frisket.ui.bench.internal.rulers.Rulers;
import org.frisket.ui.bench.internal.snap.Snapping;
import org.frisket.ui.bench.internal.tools.SpacePan;
import org.frisket.ui.bench.internal.typing.Typing;

/**
 * A job on the bench. Edits of every origin run through its one command stack: ask it for an {@link EditExecutor}. A
 * file that cannot be read gets a page that says why.
 */
public final class BenchEditor extends GraphicalEditor implements PictureJob.Client, Typing.Host, NodeMode.Host,
		IPersistableEditor {

	private static final String LOOK = "look"; //$NON-NLS-1$

	private BenchDocument document;
	private String trouble;
	private MessagePage messagePage;
	private BenchCanvas canvas;
	private PictureJob pictures;
	private EditorJob onBench;
	private NoticeBar notices;
	private EditorFile file;
	private Runnable unitUnwatched;
	private BenchKeys keys;
	private Typing typing;
	private SelectionGrips grips;
	private Looks looks;
	private String rememberedLook;
	private NodeMode nodes;
	private Rulers rulers;
	private boolean complete;

	public BenchEditor() {
		setEditDomain(new DefaultEditDomain(this));
	}

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		super.init(site, input);
		setPartName(input.getName());
		try {
			document = document(input);
			document.path().ifPresent(RecentJobs.shared()::add);
		} catch (IOException e) {
			trouble = e.getMessage();
		}
		keys = new BenchKeys(site.getService(IContextService.class));
	}

	private static BenchDocument document(IEditorInput input) throws IOException, PartInitException {
		if (input instanceof JobInput job) {
			return BenchDocument.open(job.path(), Recovery.store());
		}
		if (input instanceof UntitledInput untitled) {
			return BenchDocument.untitled(untitled.number(), Recovery.store());
		}
		throw new PartInitException(NLS.bind(Messages.BenchEditor_wrongInput, input.getName()));
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
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
		notices = new NoticeBar(page);
		Composite body = new Composite(page, SWT.NONE);
		body.setLayout(new FillLayout());
		GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
		super.createPartControl(body);
		rulers = new Rulers(body, getGraphicalViewer(), document, canvas.zoom());
		file = new EditorFile(this, notices);
		unitUnwatched = LengthUnit.whenChanged(() -> parent.getDisplay().asyncExec(this::updateStatus));
		pictures = new PictureJob(parent.getDisplay(), this);
		getCommandStack().addCommandStackEventListener(this::stackEvent);
		pictures.request(document.snapshot());
	}

	@Override
	protected void configureGraphicalViewer() {
		super.configureGraphicalViewer();
		canvas = new BenchCanvas(getGraphicalViewer(), this::updateStatus);
		looks = new Looks(getGraphicalViewer(), document, this::announceLook);
		getGraphicalViewer().addSelectionChangedListener(event -> updateStatus());
		onBench = new EditorJob(this);
	}

	@Override
	protected void initializeGraphicalViewer() {
		getGraphicalViewer().setContents(document);
		typing = new Typing(getGraphicalViewer(), document.job(), getCommandStack(), this);
		new SpacePan(getGraphicalViewer().getControl(), canvas.zoom(), typing::isActive);
		looks.restore(rememberedLook);
		new Snapping(getGraphicalViewer(), document.job());
		grips = new SelectionGrips(getGraphicalViewer(), document, canvas.zoom());
		nodes = new NodeMode(getGraphicalViewer(), document, getCommandStack(), this);
	}

	private void stackEvent(CommandStackEvent event) {
		if (event.isPostChangeEvent() && document != null) {
			changed(pictures::request);
		}
	}

	@Override
	public void retyped() {
		if (document != null) {
			changed(pictures::requestNext);
		}
	}

	private void changed(Consumer<Job> request) {
		complete = false;
		Job snapshot = document.snapshot();
		request.accept(snapshot);
		file.changed(snapshot);
		firePropertyChange(PROP_DIRTY);
		UndoState.announce(getSite());
		updateStatus();
		onBench.jobChanged();
	}

	@Override
	public void follow(String id) {
		pictures.setTyped(id);
		if (id != null) {
			complete = false;
			pictures.requestNext(document.snapshot());
		}
	}

	@Override
	public void setTyping(boolean isTyping) {
		if (isTyping) {
			// what the pointer did before ends: nodes, the pen
			getEditDomain().loadDefaultTool();
		}
		keys.setTyping(isTyping);
	}

	@Override
	public void preview(Job job) {
		complete = false;
		pictures.requestNext(job);
	}

	@Override
	public void setEditingNodes(boolean editing) {
		keys.setEditingNodes(editing);
		grips.setAway(editing);
	}

	@Override
	public void say(String message) {
		getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(message);
	}

	@Override
	public void caretsMade(List<Point> places) {
		typing.caretsMade(places);
	}

	@Override
	public void pictureMade(JobPicture picture, boolean allFindings) {
		complete = allFindings;
		document.setPicture(picture);
		canvas.fitOnce();
		updateStatus();
		onBench.pictureChanged();
	}

	@Override
	public void curesMade(Map<Finding, List<Cure>> cures) {
		onBench.curesMade(cures);
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

	/** Where wordings are typed; null if the file could not be read. */
	public Typing typing() {
		return typing;
	}

	/** Where nodes are edited; null if the file could not be read. */
	public NodeMode nodes() {
		return nodes;
	}

	/** The grips around the selection; null if the file could not be read. */
	public SelectionGrips grips() {
		return grips;
	}

	/** How the bench looks at its job; null if the file could not be read. */
	public Looks looks() {
		return looks;
	}

	/** Has the menus tick the look that is shown. */
	public void announceLook() {
		getSite().getService(ICommandService.class).refreshElements(LookHandler.COMMAND_ID, null);
	}

	@Override
	public void restoreState(IMemento memento) {
		rememberedLook = memento.getString(LOOK);
	}

	@Override
	public void saveState(IMemento memento) {
		memento.putString(LOOK, looks == null ? rememberedLook : looks.look().name());
	}

	/** The rulers along the bench; null if the file could not be read. */
	public Rulers rulers() {
		return rulers;
	}

	public CommandStack commandStack() {
		return getCommandStack();
	}

	void updateStatus() {
		if (getEditorSite().getActionBarContributor() instanceof BenchStatusLine line) {
			line.show(this, canvas == null ? BenchStatus.NOTHING : status());
		}
	}

	/** Says when the last recovery copy was made. */
	void showAutosave(String text) {
		if (getEditorSite().getActionBarContributor() instanceof BenchStatusLine line) {
			line.showAutosave(this, text);
		}
	}

	/** Whether this is the editor in front. */
	void setInFront(boolean inFront) {
		if (file != null) {
			file.setSeen(inFront);
			announceLook();
		}
	}

	private BenchStatus status() {
		return BenchStatus.of(canvas.pointer(), Selection.parts(getGraphicalViewer()), document.picture(), complete,
				canvas.zoom().scale());
	}

	/** What the line above the bench says about the job's file; empty if nothing. */
	public String notice() {
		return notices == null ? "" : notices.text(); //$NON-NLS-1$
	}

	@Override
	public boolean isDirty() {
		return document != null && (document.isUnlikeItsFile() || super.isDirty());
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		if (file != null) {
			file.save(monitor);
		}
	}

	@Override
	public boolean isSaveAsAllowed() {
		return document != null;
	}

	@Override
	public void doSaveAs() {
		file.saver().saveAs();
	}

	/** Saves without asking, and shows the file from now on. What goes wrong is shown to the user. */
	public void saveTo(Path path, IProgressMonitor monitor) {
		if (!file.saver().saveTo(path) && monitor != null) {
			monitor.setCanceled(true);
		}
	}

	/** The job is in this file now. */
	void saved(Path path) {
		typing.end(true);
		getCommandStack().markSaveLocation();
		notices.hide();
		setInput(new JobInput(path));
		setPartName(getEditorInput().getName());
		firePropertyChange(PROP_INPUT);
		fileRelationChanged();
	}

	/** How the job stands to its file is not what it was. */
	void fileRelationChanged() {
		file.changed(document.snapshot());
		firePropertyChange(PROP_DIRTY);
	}

	/**
	 * Shows the job as its file has it, as large and at the same place as now, and gives up what was not saved; a job
	 * without a file is closed.
	 */
	void reload() {
		BenchCanvas.Look look = canvas.look();
		IWorkbenchPage page = getSite().getPage();
		IEditorInput input = getEditorInput();
		page.closeEditor(this, false);
		if (input instanceof JobInput) {
			try {
				if (page.openEditor(input, Bench.EDITOR_ID) instanceof BenchEditor again && again.canvas != null) {
					again.canvas.beginWith(look);
				}
			} catch (PartInitException e) {
				StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
			}
		}
	}

	@Override
	@SuppressWarnings({ "rawtypes", "unchecked" })
	public Object getAdapter(Class type) {
		if (type == JobOnBench.class) {
			return onBench;
		}
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
			looks.close();
			file.close();
			unitUnwatched.run();
		}
		super.dispose();
	}
}
