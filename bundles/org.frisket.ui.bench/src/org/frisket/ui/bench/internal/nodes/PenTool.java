package org.frisket.ui.bench.internal.nodes;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.editing.elements.PlaceElement;
import org.frisket.geometry.Point;
import org.frisket.geometry.nodes.DrawnPath;
import org.frisket.geometry.nodes.NodeAt;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.geometry.nodes.NodeSelection;
import org.frisket.geometry.nodes.PathNode;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.PreviewColours;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.snap.SnapDrag;
import org.frisket.ui.bench.internal.snap.SnapKey;
import org.frisket.ui.bench.internal.snap.Snapping;
import org.frisket.ui.bench.internal.surface.SurfaceOption;
import org.frisket.ui.bench.internal.tools.PointerTag;

/**
 * Draws a path: a click sets a corner, a drag a smooth node with handles; Shift keeps to eighths of a turn. A press on
 * the first node closes the path, Enter or a double click ends it open, Backspace takes the last node back, Escape
 * gives it all up. Alt or Control keeps everything from holding the points. A closed path is cut, an open one drawn.
 */
public final class PenTool extends AbstractTool {

	private static final int REACH_PX = 8;
	/** After the shapes to start from, so that the layer of a first path has a colour of its own. */
	private static final int COLOUR = 7;

	private final GraphicalViewer viewer;
	private final PointerTag tag;
	/** What can hold the next point; null if that is to be found out. */
	private SnapDrag snap;
	private SnapKey key = new SnapKey();
	private final Runnable jobChanged = this::forgetHolds;
	private Runnable optionsUnwatched;
	private DrawnPath drawn = DrawnPath.EMPTY;
	private NodesFigure figure;
	/** Whether the button was pressed on the first node. */
	private boolean closing;

	private PenTool(GraphicalViewer viewer) {
		this.viewer = viewer;
		tag = new PointerTag(viewer);
	}

	/** Takes the pen up. */
	public static void take(GraphicalViewer viewer) {
		viewer.deselectAll();
		viewer.getEditDomain().setActiveTool(new PenTool(viewer));
		viewer.getControl().setFocus();
	}

	/** Takes the last node back; false if there is none. */
	public boolean takeBack() {
		boolean had = !drawn.isEmpty();
		setState(STATE_INITIAL);
		drawn = drawn.withoutLast();
		forgetHolds();
		show();
		return had;
	}

	/** What is drawn so far. */
	public DrawnPath drawn() {
		return drawn;
	}

	@Override
	protected String getCommandName() {
		return REQ_CREATE;
	}

	@Override
	protected Cursor calculateCursor() {
		return Cursors.CROSS;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		resetFlags();
		if (button != 1) {
			return true;
		}
		setState(STATE_DRAG);
		key = new SnapKey();
		closing = drawn.canClose() && isNear(drawn.first().place());
		Point place = place(meaning());
		if (!closing && (drawn.isEmpty() || !isNear(drawn.last().place()) && !place.equals(drawn.last().place()))) {
			drawn = drawn.to(place);
			forgetHolds();
		}
		show();
		return true;
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			if (!closing) {
				drawn = drawn.pulled(from(drawn.last().place(), meaning()));
			}
			show();
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		boolean pulled = isInState(STATE_DRAG_IN_PROGRESS);
		if (button == 1 && isInState(STATE_DRAG | STATE_DRAG_IN_PROGRESS)) {
			setState(STATE_INITIAL);
			if (closing) {
				finish(pulled ? drawn.closed(from(drawn.first().place(), meaning())) : drawn.closed());
			} else {
				show();
			}
		}
		return true;
	}

	@Override
	protected boolean handleDoubleClick(int button) {
		if (button == 1) {
			finish(drawn.open());
		}
		return true;
	}

	@Override
	protected boolean handleMove() {
		key = new SnapKey();
		show();
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		switch (event.keyCode) {
		case SWT.ESC -> getDomain().loadDefaultTool();
		case SWT.CR, SWT.KEYPAD_CR -> finish(drawn.open());
		case SWT.BS -> takeBack();
		default -> {
			key.turned(event.keyCode, true);
			show();
		}
		}
		return true;
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		if (isActive()) {
			key.turned(event.keyCode, false);
			show();
		}
		return true;
	}

	private boolean isNear(Point mm) {
		return zoom().toPixel(mm).getDistance(getLocation()) <= REACH_PX;
	}

	/** Where a node comes to lie that is set now. */
	private Point place(PointerPlace meaning) {
		return drawn.isEmpty() ? meaning.meant(pointer()) : from(drawn.last().place(), meaning);
	}

	/** Where the pointer means, seen from a place. */
	private Point from(Point place, PointerPlace meaning) {
		return getCurrentInput().isShiftKeyDown() ? meaning.stepped(place, pointer()) : meaning.meant(pointer());
	}

	private PointerPlace meaning() {
		if (snap == null) {
			snap = Snapping.of(viewer).beginPath(Optional.empty(),
					drawn.withoutLast().nodes().stream().map(PathNode::place).toList());
		}
		// either of two keys, since some window managers keep a press with Alt for themselves
		boolean free = key.isHeld(getCurrentInput().isAltKeyDown()) || getCurrentInput().isControlKeyDown();
		return new PointerPlace(zoom(), snap, free);
	}

	/** What there is to hold the pen has changed. */
	private void forgetHolds() {
		if (snap != null) {
			snap.erase();
			snap = null;
		}
	}

	private Point pointer() {
		return zoom().toMm(getLocation().x, getLocation().y);
	}

	private CanvasZoom zoom() {
		return job().zoom();
	}

	private JobPart job() {
		return (JobPart) viewer.getContents();
	}

	private void show() {
		if (figure == null) {
			figure = NodesFigure.over(viewer, zoom());
		}
		boolean idle = isInState(STATE_INITIAL);
		boolean closes = idle ? drawn.canClose() && isNear(drawn.first().place()) : closing;
		PointerPlace meaning = meaning();
		Point at = place(meaning);
		figure.show(preview(idle, closes, at), selection(), drawn.isEmpty() ? null : drawn.last(),
				closes ? drawn.first().place() : null);
		tag.show(closes ? Messages.PenTool_close : LengthText.place(at.x(), at.y()), getLocation());
		if (closes) {
			snap.erase();
		} else {
			meaning.show(at);
		}
	}

	private NodePath preview(boolean idle, boolean closes, Point at) {
		if (closes) {
			return isInState(STATE_DRAG_IN_PROGRESS) ? drawn.closed(from(drawn.first().place(), meaning()))
					: drawn.closed();
		}
		return idle ? drawn.towards(at) : drawn.soFar();
	}

	/** The node that was set last. */
	private NodeSelection selection() {
		return drawn.isEmpty() ? NodeSelection.NONE : NodeSelection.of(new NodeAt(0, drawn.nodes().size() - 1));
	}

	private void finish(NodePath path) {
		if (path.isEmpty()) {
			return;
		}
		Outline outline = FrisketFactory.INSTANCE.createOutline();
		outline.setPathData(path.pathData());
		Jobs.addOperation(outline, path.contours().get(0).closed() ? OperationKind.CUT : OperationKind.DRAW);
		getDomain().loadDefaultTool();
		viewer.getEditDomain().getCommandStack().execute(new EditCommand(
				new PlaceElement(job().document().job(), outline, Messages.PenTool_layer, PreviewColours.mat(COLOUR))));
		Selection.select(viewer, List.of(outline));
	}

	@Override
	public void activate() {
		super.activate();
		optionsUnwatched = SurfaceOption.whenChanged(this::forgetHolds);
		job().document().addPictureListener(jobChanged);
	}

	@Override
	public void deactivate() {
		optionsUnwatched.run();
		job().document().removePictureListener(jobChanged);
		forgetHolds();
		tag.erase();
		if (figure != null) {
			figure.remove();
			figure = null;
		}
		super.deactivate();
	}
}
