package org.frisket.ui.bench.internal.nodes;

import java.util.List;
import java.util.Optional;

import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.shapes.ChangePath;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.geometry.nodes.NodeChange;
import org.frisket.geometry.nodes.NodeCount;
import org.frisket.geometry.nodes.NodeMoves;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.geometry.nodes.NodeSelection;
import org.frisket.geometry.nodes.SegmentAt;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.picture.PictureMaker;
import org.frisket.ui.bench.internal.snap.SnapDrag;
import org.frisket.ui.bench.internal.snap.Snapping;

/**
 * The mode in which the nodes of one outline are edited. It follows the outline through undo and redo, and ends when
 * that can no longer be edited, when another element is selected, and when another tool is taken.
 */
public final class NodeMode {

	/** What the mode asks of the editor. */
	public interface Host {

		/** Has a picture made of a job as it would be, which nobody changes any more. */
		void preview(Job job);

		/** While nodes are edited, some keys mean other things, and the grips of elements are away. */
		void setEditingNodes(boolean editing);

		/** Says something to the user; null for nothing. */
		void say(String message);
	}

	private static final String KEY = "org.frisket.ui.bench.nodes"; //$NON-NLS-1$

	private final GraphicalViewer viewer;
	private final CommandStack stack;
	private final Host host;
	private final LivePicture live;
	private final PathMemory memory = new PathMemory();

	private Outline outline;
	private NodePath path = NodePath.EMPTY;
	private NodeSelection selection = NodeSelection.NONE;
	private NodesFigure figure;
	private NodeTool tool;

	public NodeMode(GraphicalViewer viewer, BenchDocument document, CommandStack stack, Host host) {
		this.viewer = viewer;
		this.stack = stack;
		this.host = host;
		live = new LivePicture(document, host::preview);
		viewer.setProperty(KEY, this);
		viewer.addSelectionChangedListener(event -> selectionChanged());
		stack.addCommandStackEventListener(this::stackEvent);
	}

	/** The mode of a viewer; null if it has none. */
	public static NodeMode of(EditPartViewer viewer) {
		return (NodeMode) viewer.getProperty(KEY);
	}

	/** Whether the nodes of this element are edited on its bench. */
	public static boolean isOn(EditPartViewer viewer, Element element) {
		NodeMode mode = of(viewer);
		return mode != null && mode.isActive() && mode.outline == element;
	}

	public boolean isActive() {
		return outline != null;
	}

	/** The outline whose nodes are edited; null if none are. */
	public Outline outline() {
		return outline;
	}

	/** Its path in its own frame; empty if none is edited. */
	public NodePath path() {
		return path;
	}

	public NodeSelection selection() {
		return selection;
	}

	/** What is written beside the pointer; empty if nothing. */
	public String measure() {
		return tool == null ? "" : tool.measure(); //$NON-NLS-1$
	}

	/** Edits the nodes of an outline; not if it is hidden or locked. One whose path cannot be read says why. */
	public void begin(Outline wanted) {
		if (wanted == outline || !isFree(wanted)) {
			return;
		}
		end();
		Optional<NodePath> read;
		try {
			read = memory.of(wanted);
		} catch (PathDataException e) {
			host.say(NLS.bind(Messages.NodeMode_unreadable, e.position(), e.reason()));
			return;
		}
		if (read.isEmpty() || transform(wanted).determinant() == 0) {
			host.say(Messages.NodeMode_noNodes);
			return;
		}
		path = read.get();
		outline = wanted;
		Selection.select(viewer, List.of(outline));
		tool = new NodeTool(this, viewer);
		viewer.getEditDomain().setActiveTool(tool);
		viewer.getControl().setFocus();
		figure = NodesFigure.over(viewer, frame().zoom());
		host.say(null);
		host.setEditingNodes(true);
		refresh();
		refreshPart(outline);
	}

	private static boolean isFree(Element element) {
		return Jobs.jobOf(element) != null && Jobs.isShown(element) && !Jobs.isLocked(element);
	}

	/** Goes back to whole elements; the outline is selected still. */
	public void end() {
		if (!isActive()) {
			return;
		}
		Outline edited = outline;
		NodeTool taken = tool;
		outline = null;
		tool = null;
		path = NodePath.EMPTY;
		selection = NodeSelection.NONE;
		memory.clear();
		live.stop(false);
		figure.remove();
		if (viewer.getEditDomain().getActiveTool() == taken) {
			viewer.getEditDomain().loadDefaultTool();
		}
		host.setEditingNodes(false);
		refreshPart(edited);
	}

	private void refreshPart(Outline shown) {
		if (viewer.getEditPartRegistry().get(shown) instanceof ElementPart part && part.getParent() != null) {
			part.refresh();
		}
	}

	/** Selects nodes of the path, and no others. */
	public void select(NodeSelection nodes) {
		selection = nodes;
		refresh();
	}

	/** Selects the next node, or the one before. */
	public void step(boolean forward) {
		select(selection.stepped(path, forward));
		selection.nodes().stream().findFirst()
				.ifPresent(at -> frame().zoom().reveal(frame().toJob(path.node(at).place())));
	}

	/** Moves the selected nodes by mm of the job. */
	public void nudge(double dx, double dy) {
		NodePath moved = NodeMoves.nodes(path, selection.nodes(), frame().shiftToOwn(new Point(dx, dy)));
		String pathData = moved.pathData();
		execute(ChangePath.nodes(ChangePath.Change.MOVE, selection.size(), outline, pathData), moved, selection);
	}

	/** Does something to the selected nodes; an outline that loses all its nodes is deleted. */
	public void change(NodeChange change) {
		change.on(path, selection).ifPresent(outcome -> {
			if (outcome.path().isEmpty()) {
				stack.execute(new EditCommand(new DeleteElements(List.of(outline))));
				return;
			}
			execute(NodeEdits.of(change, outcome, outline), outcome.path(), outcome.selection());
		});
	}

	/** Whether a change would change anything. */
	public boolean canChange(NodeChange change) {
		return isActive() && change.on(path, selection).isPresent();
	}

	/** Adds a node at a place of a segment, and selects it. */
	void insert(SegmentAt segment, double t) {
		NodeCount.Inserted inserted = NodeCount.insert(path, segment, t);
		execute(ChangePath.nodes(ChangePath.Change.ADD, 1, outline, inserted.path().pathData()), inserted.path(),
				NodeSelection.of(inserted.node()));
	}

	/** Applies an edit that leads to a path; kinds alone may change without one. */
	void execute(ChangePath edit, NodePath after, NodeSelection selected) {
		memory.remember(after);
		boolean changes = edit.canApply();
		live.stop(changes);
		if (changes) {
			stack.execute(new EditCommand(edit));
		} else {
			path = after;
		}
		if (isActive()) {
			select(selected);
		}
	}

	/** Shows a path that is being dragged, with all that follows it. */
	void preview(NodePath dragged) {
		figure.show(dragged.transformed(frame().toJob()), selection, null, null);
		String id = outline.getId();
		live.show(job -> Jobs.element(job, id).filter(Outline.class::isInstance).map(Outline.class::cast)
				.ifPresent(copy -> copy.setPathData(dragged.pathData())));
	}

	/** Shows the path as it is. */
	void endPreview() {
		live.stop(false);
		refresh();
	}

	private void refresh() {
		if (figure != null && isActive()) {
			figure.show(path.transformed(frame().toJob()), selection, null, null);
		}
	}

	PathFrame frame() {
		return PathFrame.of(((JobPart) viewer.getContents()).zoom(), transform(outline));
	}

	private static Transform transform(Outline outline) {
		return PictureMaker.transform(outline.getTransform());
	}

	/** A drag in the path, which may be held by these of its own nodes, in its own frame. */
	SnapDrag snapping(List<Point> nodes) {
		Optional<ElementPart> part = Selection.all(viewer).stream().filter(each -> each.element() == outline)
				.findFirst();
		return Snapping.of(viewer).beginPath(part, nodes.stream().map(frame()::toJob).toList());
	}

	private void stackEvent(CommandStackEvent event) {
		if (event.isPostChangeEvent() && isActive()) {
			Optional<NodePath> now = now();
			if (now.isEmpty()) {
				end();
				return;
			}
			tool.giveUpDrag();
			live.stop(true);
			selection = selection.kept(path, now.get());
			path = now.get();
			refresh();
		}
	}

	/** The path as it is after a change of the job; empty if there is nothing to edit any more. */
	private Optional<NodePath> now() {
		if (!isFree(outline) || transform(outline).determinant() == 0) {
			return Optional.empty();
		}
		try {
			return memory.of(outline);
		} catch (PathDataException e) {
			return Optional.empty();
		}
	}

	private void selectionChanged() {
		List<Element> selected = Selection.elements(viewer);
		if (isActive() && !selected.isEmpty() && !selected.contains(outline)) {
			end();
		}
	}
}
