package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.ui.parts.GraphicalEditor;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableEditor;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.contexts.IContextService;
import org.frisket.editing.EditExecutor;
import org.frisket.model.Job;
import org.frisket.prepare.Finding;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.PlaceInput;
import org.frisket.ui.bench.internal.bridges.BridgeMode;
import org.frisket.ui.bench.internal.canvas.BenchDomain;
import org.frisket.ui.bench.internal.canvas.BenchViewer;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.files.RecentJobs;
import org.frisket.ui.bench.internal.files.Recovery;
import org.frisket.ui.bench.internal.grips.FlowGrips;
import org.frisket.ui.bench.internal.grips.SelectionGrips;
import org.frisket.ui.bench.internal.looks.LookMemory;
import org.frisket.ui.bench.internal.looks.Looks;
import org.frisket.ui.bench.internal.letters.LetterMode;
import org.frisket.ui.bench.internal.nodes.NodeMode;
import org.frisket.ui.bench.internal.rulers.Rulers;
import org.frisket.ui.bench.internal.tools.DropOnBench;
import org.frisket.ui.bench.internal.typing.Typing;

/**
 * A job on the bench. Edits of every origin run through its one command stack: ask it for an {@link EditExecutor}. A
 * file that cannot be read gets a page that says why.
 */
public final class BenchEditor extends GraphicalEditor implements IPersistableEditor {

	private BenchDocument document;
	private String trouble;
	/** Where the job is kept if that is no file, until it has come. */
	private JobPlace awaited;
	private MessagePage messagePage;
	private BenchCanvas canvas;
	private BenchPicture picture;
	private EditorJob onBench;
	private NoticeBar notices;
	private EditorFile file;
	private EditorStatus status;
	private BenchKeys keys;
	private BenchTools tools;
	private final LookMemory lookMemory = new LookMemory();

	public BenchEditor() {
		setEditDomain(new BenchDomain(this));
	}

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		super.init(site, input);
		setPartName(input.getName());
		try {
			if (input instanceof PlaceInput placed) {
				document = BenchDocument.unsaved(placed.place(), Recovery.store()).orElse(null);
				awaited = document == null ? placed.place() : null;
			} else {
				document = BenchDocument.of(input);
				document.path().ifPresent(RecentJobs.shared()::add);
			}
		} catch (IOException e) {
			trouble = e.getMessage();
		}
		keys = new BenchKeys(site.getService(IContextService.class));
	}

	@Override
	protected void createActions() {
		// no GEF actions: commands and handlers do all, so that each can be given a key
	}

	@Override
	public void createPartControl(Composite parent) {
		status = new EditorStatus(this, parent.getDisplay());
		if (awaited != null) {
			new JobArrival(this, parent, awaited).begin();
			return;
		}
		if (document == null) {
			messagePage = new MessagePage(parent, Messages.BenchEditor_couldNotOpen, trouble,
					Messages.BenchEditor_couldNotOpenAdvice);
			return;
		}
		lay(parent);
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

	private void lay(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
		notices = new NoticeBar(page);
		picture = new BenchPicture(this, parent.getDisplay());
		super.createPartControl(notices.roomBelow());
		file = new EditorFile(this, notices);
		getCommandStack().addCommandStackEventListener(event -> {
			if (event.isPostChangeEvent()) {
				jobChanged(picture::follow);
			}
		});
		picture.follow(document.snapshot());
	}

	@Override
	protected void createGraphicalViewer(Composite parent) {
		GraphicalViewer viewer = new BenchViewer();
		viewer.createControl(parent);
		setGraphicalViewer(viewer);
		configureGraphicalViewer();
		hookGraphicalViewer();
		initializeGraphicalViewer();
	}

	@Override
	protected void configureGraphicalViewer() {
		super.configureGraphicalViewer();
		canvas = new BenchCanvas(getGraphicalViewer(), status::update);
		getGraphicalViewer().addSelectionChangedListener(event -> status.update());
		onBench = new EditorJob(this);
	}

	@Override
	protected void initializeGraphicalViewer() {
		getGraphicalViewer().setContents(document);
		tools = new BenchTools(this, picture, keys);
		lookMemory.restore(tools.looks());
		new DropOnBench(getGraphicalViewer().getControl(), zoom(), onBench);
	}

	/** The job has changed within the edit that was made last, and may go on to do so. */
	void jobChanged() {
		jobChanged(picture::followOn);
	}

	private void jobChanged(Consumer<Job> follow) {
		Job snapshot = document.snapshot();
		follow.accept(snapshot);
		file.changed(snapshot);
		firePropertyChange(PROP_DIRTY);
		UndoState.announce(getSite());
		status.update();
		onBench.jobChanged();
	}

	/** The job is seen as it would be after an edit that is weighed, or again as it is. */
	void previewChanged() {
		onBench.previewChanged();
	}

	/** Has what helps against a finding looked for. */
	void seekCures(Finding finding) {
		picture.seekCures(finding);
	}

	/** Says something to the user; null for nothing. */
	public void say(String message) {
		getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(message);
	}

	/** The job that is shown; null if the file could not be read. */
	public BenchDocument document() {
		return document;
	}

	/** Whether the picture is up to date with the job, findings included. */
	public boolean isUpToDate() {
		return picture != null && picture.isComplete();
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
		return tools == null ? null : tools.typing();
	}

	/** The mode in which letters are nudged; null where the job could not be read. */
	public LetterMode letters() {
		return tools == null ? null : tools.letters();
	}

	/** Where nodes are edited; null if the file could not be read. */
	public NodeMode nodes() {
		return tools == null ? null : tools.nodes();
	}

	/** Where bridges are set by hand; null if the file could not be read. */
	public BridgeMode bridges() {
		return tools == null ? null : tools.bridges();
	}

	/** The grips around the selection; null if the file could not be read. */
	public SelectionGrips grips() {
		return tools == null ? null : tools.grips();
	}

	/** The grips of what a wording runs along; null if the file could not be read. */
	public FlowGrips flowGrips() {
		return tools == null ? null : tools.flow();
	}

	/** How the bench looks at its job; null if the file could not be read. */
	public Looks looks() {
		return tools == null ? null : tools.looks();
	}

	@Override
	public void restoreState(IMemento memento) {
		lookMemory.read(memento);
	}

	@Override
	public void saveState(IMemento memento) {
		lookMemory.write(memento, looks());
	}

	/** The rulers along the bench; null if the file could not be read. */
	public Rulers rulers() {
		return tools == null ? null : tools.rulers();
	}

	public CommandStack commandStack() {
		return getCommandStack();
	}

	/** Null if the file could not be read. */
	EditorFile file() {
		return file;
	}

	/** The job as the views see it; null if the file could not be read. */
	EditorJob onBench() {
		return onBench;
	}

	/** What it says in the status line. */
	EditorStatus status() {
		return status;
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
		typing().end(true);
		getCommandStack().markSaveLocation();
		notices.hide();
		setInput(new JobInput(path));
		setPartName(getEditorInput().getName());
		firePropertyChange(PROP_INPUT);
		fileRelationChanged();
	}

	/** The job is what is held where it is kept. */
	void kept() {
		getCommandStack().markSaveLocation();
		notices.hide();
		setPartName(getEditorInput().getName());
		fileRelationChanged();
	}

	/** How the job stands to its file is not what it was. */
	void fileRelationChanged() {
		file.changed(document.snapshot());
		firePropertyChange(PROP_DIRTY);
	}

	/** What is seen and how large; null if the file could not be read. */
	BenchCanvas canvas() {
		return canvas;
	}

	@Override
	@SuppressWarnings({ "rawtypes", "unchecked" })
	public Object getAdapter(Class type) {
		if (onBench == null || type != JobOnBench.class && type != EditExecutor.class) {
			return super.getAdapter(type);
		}
		return type == JobOnBench.class ? onBench : onBench.edits();
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
		if (file != null) {
			picture.close();
			onBench.preview().close();
			tools.close();
			file.close();
		}
		if (status != null) {
			status.close();
		}
		super.dispose();
	}
}
