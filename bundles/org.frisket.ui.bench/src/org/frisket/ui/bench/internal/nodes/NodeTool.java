package org.frisket.ui.bench.internal.nodes;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.geometry.nodes.NodeSelection;
import org.frisket.ui.bench.internal.figures.MarqueeFigure;
import org.frisket.ui.bench.internal.snap.SnapDrag;
import org.frisket.ui.bench.internal.snap.SnapKey;
import org.frisket.ui.bench.internal.tools.PointerTag;

/**
 * The pointer while nodes are edited: a click selects, a drag moves nodes, handles or segments or gathers nodes with a
 * box, a double click adds a node or, away from the path, leaves. Alt keeps everything from holding what is dragged.
 * Escape gives up the drag, or leaves.
 */
final class NodeTool extends AbstractTool {

	private static final int MIDDLE_BUTTON = 2;
	private static final int MENU_BUTTON = 3;

	private final NodeMode mode;
	private final PointerTag tag;
	private SnapKey key = new SnapKey();
	private NodeDrag drag;
	private SnapDrag snap;
	private NodePath dragged;
	private Point pressed;
	private MarqueeFigure marquee;
	private org.eclipse.draw2d.geometry.Point panned;

	NodeTool(NodeMode mode, EditPartViewer viewer) {
		this.mode = mode;
		tag = new PointerTag(viewer);
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
			key = new SnapKey();
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

	/** What lies under the pointer; null for nothing. */
	private NodeDrag pick() {
		return new NodePick(mode.frame(), mode.path(), mode.selection()).at(pointer());
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
		if (snap == null) {
			snap = mode.snapping(drag.others());
		}
		PointerPlace place = new PointerPlace(mode.frame().zoom(), snap,
				key.isHeld(getCurrentInput().isAltKeyDown()));
		Point goal = drag.goal(pressed, pointer(), getCurrentInput().isShiftKeyDown(), place);
		dragged = drag.path(goal, getCurrentInput().isControlKeyDown());
		mode.preview(dragged);
		tag.show(drag.measure(goal), getLocation());
		place.show(goal);
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
			key.turned(event.keyCode, true);
			followKeys();
		}
		return true;
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		key.turned(event.keyCode, false);
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
		if (snap != null) {
			snap.erase();
			snap = null;
		}
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
