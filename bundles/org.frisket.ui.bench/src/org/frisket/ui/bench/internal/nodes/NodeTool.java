package org.frisket.ui.bench.internal.nodes;

import java.util.Comparator;
import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.nodes.HandleAt;
import org.frisket.geometry.nodes.NearestOnPath;
import org.frisket.geometry.nodes.NodeAt;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.geometry.nodes.NodeSelection;
import org.frisket.geometry.nodes.PathNode;
import org.frisket.geometry.nodes.Side;
import org.frisket.ui.bench.internal.figures.MarqueeFigure;

/**
 * The pointer while nodes are edited: a click selects, a drag moves nodes, handles or segments or gathers nodes with a
 * box, a double click adds a node or, away from the path, leaves. Escape gives up the drag, or leaves.
 */
final class NodeTool extends AbstractTool {

	private static final int REACH_PX = 7;
	private static final int MIDDLE_BUTTON = 2;
	private static final int MENU_BUTTON = 3;

	private final NodeMode mode;
	private final PointerTag tag = new PointerTag();
	private NodeDrag drag;
	private NodePath dragged;
	private Point pressed;
	private MarqueeFigure marquee;
	private org.eclipse.draw2d.geometry.Point panned;

	NodeTool(NodeMode mode) {
		this.mode = mode;
	}

	String measure() {
		return tag.text();
	}

	@Override
	protected String getCommandName() {
		return REQ_SELECTION;
	}

	@Override
	protected Cursor calculateCursor() {
		if (panned != null) {
			return Cursors.HAND;
		}
		if (isInState(STATE_DRAG_IN_PROGRESS) && drag != null) {
			return Cursors.SIZEALL;
		}
		return isInState(STATE_INITIAL) && mode.isActive() && pick() != null ? Cursors.HAND : Cursors.ARROW;
	}

	@Override
	protected boolean handleMove() {
		refreshCursor();
		return true;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		resetFlags();
		if (button == MIDDLE_BUTTON) {
			panned = getLocation();
		} else if (button == MENU_BUTTON) {
			showMenu();
		} else if (button == 1) {
			pressed = pointer();
			drag = pick();
			if (drag instanceof NodeDrag.Nodes nodes) {
				drag = picked(nodes);
			}
			setState(STATE_DRAG);
		}
		return true;
	}

	/** A press on a node selects it at once; one that is selected already is left with the others. */
	private NodeDrag picked(NodeDrag.Nodes nodes) {
		if (getCurrentInput().isShiftKeyDown()) {
			mode.select(mode.selection().toggled(nodes.held()));
		} else if (!mode.selection().contains(nodes.held())) {
			mode.select(NodeSelection.of(nodes.held()));
		}
		return mode.selection().contains(nodes.held())
				? new NodeDrag.Nodes(nodes.frame(), nodes.path(), mode.selection(), nodes.held()) : null;
	}

	private void showMenu() {
		pressed = pointer();
		if (pick() instanceof NodeDrag.Nodes nodes && !mode.selection().contains(nodes.held())) {
			mode.select(NodeSelection.of(nodes.held()));
		}
		new NodeMenu(mode).open(getCurrentViewer().getControl());
	}

	/** What lies under the pointer, the handles of selected nodes first; null for nothing. */
	private NodeDrag pick() {
		Point at = pointer();
		PathFrame frame = mode.frame();
		NodePath shown = mode.path().transformed(frame.toJob());
		double reach = REACH_PX / frame.zoom().pixelsPerMm();
		Optional<HandleAt> handle = handle(shown, at, reach);
		Optional<NodeAt> node = NearestOnPath.node(shown, at, reach);
		if (handle.isPresent() && (node.isEmpty()
				|| away(shown, handle.get(), at) < shown.node(node.get()).place().distance(at))) {
			return new NodeDrag.Handle(frame, mode.path(), handle.get());
		}
		if (node.isPresent()) {
			return new NodeDrag.Nodes(frame, mode.path(), mode.selection(), node.get());
		}
		return NearestOnPath.of(shown, at).filter(near -> near.distance() <= reach)
				.map(near -> new NodeDrag.Segment(frame, mode.path(), new NearestOnPath(near.segment(), near.t(),
						mode.path().segment(near.segment()).at(near.t()), near.distance())))
				.orElse(null);
	}

	private Optional<HandleAt> handle(NodePath shown, Point at, double reach) {
		return mode.selection().nodes().stream()
				.flatMap(node -> java.util.stream.Stream.of(new HandleAt(node, Side.IN), new HandleAt(node, Side.OUT)))
				.filter(handle -> isSeen(shown.node(handle.node()), handle.side()))
				.filter(handle -> away(shown, handle, at) <= reach)
				.min(Comparator.comparingDouble(handle -> away(shown, handle, at)));
	}

	private static boolean isSeen(PathNode node, Side side) {
		return node.handle(side) != null && !node.handle(side).equals(node.place());
	}

	private static double away(NodePath shown, HandleAt handle, Point at) {
		return shown.node(handle.node()).handle(handle.side()).distance(at);
	}

	private Point pointer() {
		return mode.frame().zoom().toMm(getLocation().x, getLocation().y);
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (panned != null) {
			org.eclipse.draw2d.geometry.Point now = getLocation();
			mode.frame().zoom().pan(panned.x - now.x, panned.y - now.y);
			panned = now;
		} else if (isInState(STATE_DRAG_IN_PROGRESS)) {
			follow();
		}
		return true;
	}

	private void follow() {
		if (drag == null) {
			showMarquee();
			return;
		}
		Point goal = drag.goal(pressed, pointer(), getCurrentInput().isShiftKeyDown());
		// either of two keys, since some window managers keep a drag with Alt for themselves
		boolean alone = getCurrentInput().isControlKeyDown() || getCurrentInput().isAltKeyDown();
		dragged = drag.path(goal, alone);
		mode.preview(dragged);
		tag.show(mode.layer(LayerConstants.FEEDBACK_LAYER), drag.measure(goal), getLocation());
	}

	private void showMarquee() {
		if (marquee == null) {
			marquee = new MarqueeFigure();
			addFeedback(marquee);
		}
		Rectangle box = new Rectangle(getStartLocation(), getLocation());
		marquee.getParent().translateToRelative(box);
		marquee.setBounds(box);
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (button == MIDDLE_BUTTON) {
			panned = null;
		}
		if (button == 1 && stateTransition(STATE_DRAG_IN_PROGRESS, STATE_INITIAL)) {
			finishDrag();
		} else if (button == 1 && stateTransition(STATE_DRAG, STATE_INITIAL)) {
			click();
		}
		refreshCursor();
		return true;
	}

	private void finishDrag() {
		NodeDrag done = drag;
		NodePath after = dragged;
		erase();
		if (done == null) {
			gather();
		} else if (after != null) {
			mode.execute(done.edit(mode.outline(), after.pathData()), after, mode.selection());
		}
	}

	private void gather() {
		Point to = pointer();
		NodePath shown = mode.path().transformed(mode.frame().toJob());
		NodeSelection inside = NodeSelection.within(shown, Bounds.of(pressed).with(to));
		mode.select(getCurrentInput().isShiftKeyDown() ? mode.selection().plus(inside.nodes()) : inside);
	}

	private void click() {
		boolean shift = getCurrentInput().isShiftKeyDown();
		if (drag instanceof NodeDrag.Nodes nodes && !shift) {
			mode.select(NodeSelection.of(nodes.held()));
		} else if (drag instanceof NodeDrag.Segment segment) {
			mode.select(shift ? mode.selection().plus(segment.ends().nodes()) : segment.ends());
		} else if (drag == null && !shift) {
			mode.select(NodeSelection.NONE);
		}
		drag = null;
	}

	@Override
	protected boolean handleDoubleClick(int button) {
		if (button != 1) {
			return true;
		}
		NodeDrag under = pick();
		if (under instanceof NodeDrag.Segment segment && segment.held().t() > 0 && segment.held().t() < 1) {
			setState(STATE_INITIAL);
			erase();
			mode.insert(segment.held().segment(), segment.held().t());
		} else if (under == null) {
			mode.end();
		}
		// a node that was just clicked may be dragged at once
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC) {
			if (isInState(STATE_DRAG | STATE_DRAG_IN_PROGRESS)) {
				giveUpDrag();
				mode.endPreview();
			} else {
				mode.end();
			}
		} else {
			followKeys();
		}
		return true;
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		followKeys();
		return true;
	}

	/** Nothing comes of a drag that is under way. */
	void giveUpDrag() {
		setState(STATE_INITIAL);
		erase();
	}

	private void followKeys() {
		if (isInState(STATE_DRAG_IN_PROGRESS) && mode.isActive()) {
			follow();
		}
	}

	private void erase() {
		drag = null;
		dragged = null;
		tag.erase();
		if (marquee != null) {
			removeFeedback(marquee);
			marquee = null;
		}
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
		mode.end();
	}
}
