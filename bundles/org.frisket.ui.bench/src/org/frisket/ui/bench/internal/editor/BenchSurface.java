package org.frisket.ui.bench.internal.editor;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.ui.parts.GraphicalEditor;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableEditor;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.contexts.IContextService;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.prepare.Finding;
import org.frisket.ui.bench.internal.bridges.BridgeMode;
import org.frisket.ui.bench.internal.canvas.BenchDomain;
import org.frisket.ui.bench.internal.canvas.BenchViewer;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.grips.FlowGrips;
import org.frisket.ui.bench.internal.grips.SelectionGrips;
import org.frisket.ui.bench.internal.letters.LetterMode;
import org.frisket.ui.bench.internal.looks.LookMemory;
import org.frisket.ui.bench.internal.looks.Looks;
import org.frisket.ui.bench.internal.nodes.NodeMode;
import org.frisket.ui.bench.internal.rulers.Rulers;
import org.frisket.ui.bench.internal.tools.DropOnBench;
import org.frisket.ui.bench.internal.typing.Typing;

/** The surface of an editor: the viewer of its job, its picture, and all that it is worked with. */
abstract class BenchSurface extends GraphicalEditor implements IPersistableEditor {

	private BenchCanvas canvas;
	private BenchPicture picture;
	private EditorJob onBench;
	private BenchKeys keys;
	private BenchTools tools;
	private final LookMemory lookMemory = new LookMemory();

	BenchSurface() {
		setEditDomain(new BenchDomain(this));
	}

	/** The job that is shown; null if it could not be read, or has not come yet. */
	public abstract BenchDocument document();

	/** What it says in the status line. */
	abstract EditorStatus status();

	/** The job is another: whoever shows something of it is told. @param snapshot of the job, which nobody changes */
	abstract void changed(Job snapshot);

	/** Says something to the user; null for nothing. */
	public abstract void say(String message);

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		super.init(site, input);
		keys = new BenchKeys(site.getService(IContextService.class));
	}

	/** Lays files of others into the job, once it is asked how. @param place in mm; empty for the usual one */
	abstract void takeIn(List<Path> files, Optional<Point> place);

	@Override
	protected void createActions() {
		// no GEF actions: commands and handlers do all, so that each can be given a key
	}

	/** Lays the job there. */
	void lay(Composite parent) {
		picture = new BenchPicture(this, parent.getDisplay());
		super.createPartControl(parent);
		getCommandStack().addCommandStackEventListener(event -> {
			if (event.isPostChangeEvent()) {
				jobChanged(picture::follow);
			}
		});
		picture.follow(document().snapshot());
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
		canvas = new BenchCanvas(getGraphicalViewer(), () -> status().update());
		getGraphicalViewer().addSelectionChangedListener(event -> status().update());
		onBench = new EditorJob(this);
	}

	@Override
	protected void initializeGraphicalViewer() {
		getGraphicalViewer().setContents(document());
		tools = new BenchTools(this, picture, keys);
		lookMemory.restore(tools.looks());
		new DropOnBench(getGraphicalViewer().getControl(), zoom(), onBench);
	}

	/** The job has changed within the edit that was made last, and may go on to do so. */
	void jobChanged() {
		jobChanged(picture::followOn);
	}

	private void jobChanged(Consumer<Job> follow) {
		Job snapshot = document().snapshot();
		follow.accept(snapshot);
		changed(snapshot);
		UndoState.announce(getSite());
		status().update();
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

	/** Whether the picture is up to date with the job, findings included. */
	public boolean isUpToDate() {
		return picture != null && picture.isComplete();
	}

	/** The viewer; null while there is no job. So it is with all that follow. */
	public GraphicalViewer viewer() {
		return getGraphicalViewer();
	}

	public CanvasZoom zoom() {
		return canvas == null ? null : canvas.zoom();
	}

	/** Shows the whole sheet. */
	public void fit() {
		if (canvas != null) {
			canvas.fit();
		}
	}

	/** Where wordings are typed. */
	public Typing typing() {
		return tools == null ? null : tools.typing();
	}

	/** The mode in which letters are nudged. */
	public LetterMode letters() {
		return tools == null ? null : tools.letters();
	}

	/** Where nodes are edited. */
	public NodeMode nodes() {
		return tools == null ? null : tools.nodes();
	}

	/** Where bridges are set by hand. */
	public BridgeMode bridges() {
		return tools == null ? null : tools.bridges();
	}

	/** The grips around the selection. */
	public SelectionGrips grips() {
		return tools == null ? null : tools.grips();
	}

	/** The grips of what a wording runs along. */
	public FlowGrips flowGrips() {
		return tools == null ? null : tools.flow();
	}

	/** How the bench looks at its job. */
	public Looks looks() {
		return tools == null ? null : tools.looks();
	}

	/** The rulers along the bench. */
	public Rulers rulers() {
		return tools == null ? null : tools.rulers();
	}

	/** What is seen and how large. */
	BenchCanvas canvas() {
		return canvas;
	}

	/** The job as the views see it. */
	EditorJob onBench() {
		return onBench;
	}

	public CommandStack commandStack() {
		return getCommandStack();
	}

	@Override
	public void restoreState(IMemento memento) {
		lookMemory.read(memento);
	}

	@Override
	public void saveState(IMemento memento) {
		lookMemory.write(memento, looks());
	}

	@Override
	public void dispose() {
		if (tools != null) {
			picture.close();
			onBench.preview().close();
			tools.close();
		}
		super.dispose();
	}
}
