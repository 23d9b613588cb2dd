package org.frisket.ui.bench.internal.bridges;

import org.eclipse.draw2d.Cursors;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.geometry.Point;
import org.frisket.prepare.wording.BridgeEdits;
import org.frisket.prepare.wording.Bridgework;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.tools.PointerTag;

/**
 * The pointer while bridges are set: a click on a bridge chooses it, a drag moves it along its island or to other
 * letters, a click into an island or beside a gap adds one. Escape gives up
 * the drag, or leaves.
 */
final class BridgeTool extends AbstractTool {

	private static final int MIDDLE_BUTTON = 2;

	private final BridgeMode mode;
	private final PointerTag tag;
	private BridgeEdits.Held drag;
	private org.eclipse.draw2d.geometry.Point panned;

	BridgeTool(BridgeMode mode, EditPartViewer viewer) {
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
		return isInState(STATE_INITIAL) && mode.isActive() && pick() != null ? Cursors.HAND : Cursors.CROSS;
	}

	@Override
	protected boolean handleMove() {
		refreshCursor();
		BridgeEdits.Held under = mode.isActive() ? pick() : null;
		if (under == null) {
			tag.erase();
		} else {
			tag.show(reading(under), getLocation());
		}
		return true;
	}

	private static String reading(BridgeEdits.Held held) {
		if (held instanceof BridgeEdits.Held.Between between) {
			Bridgework.Span span = between.span();
			return NLS.bind(Messages.BridgeTool_size, LengthText.of(span.width()),
					LengthText.of(span.from().distance(span.to())));
		}
		BridgeEdits.Held.OfIsland of = (BridgeEdits.Held.OfIsland) held;
		Bridgework.Stub stub = of.island().bridges().get(of.number());
		return NLS.bind(Messages.BridgeTool_size, LengthText.of(stub.width()),
				LengthText.of(stub.inner().distance(stub.outer())));
	}

	@Override
	protected boolean handleButtonDown(int button) {
		resetFlags();
		if (button == MIDDLE_BUTTON) {
			panned = getLocation();
		} else if (button == 1) {
			drag = pick();
			mode.choose(drag == null ? null : drag.place());
			setState(STATE_DRAG);
		}
		return true;
	}

	private BridgeEdits.Held pick() {
		return BridgeEdits.at(mode.work(), pointer(), mode.reach()).orElse(null);
	}

	/** In the own frame of the wording. */
	private Point pointer() {
		return mode.toOwn(mode.zoom().toMm(getLocation().x, getLocation().y));
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (panned != null) {
			org.eclipse.draw2d.geometry.Point now = getLocation();
			mode.zoom().pan(panned.x - now.x, panned.y - now.y);
			panned = now;
		} else if (isInState(STATE_DRAG_IN_PROGRESS) && drag != null) {
			mode.preview(drag, pointer());
			tag.show(drag instanceof BridgeEdits.Held.OfIsland of
					? NLS.bind(Messages.BridgeTool_angle, Math.round(of.island().angle(pointer())))
					: reading(drag), getLocation());
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (button == MIDDLE_BUTTON) {
			panned = null;
		}
		BridgeEdits.Held done = drag;
		if (button == 1 && stateTransition(STATE_DRAG_IN_PROGRESS, STATE_INITIAL)) {
			Point goal = pointer();
			erase();
			if (done != null) {
				mode.refresh();
				mode.move(done, goal);
			}
		} else if (button == 1 && stateTransition(STATE_DRAG, STATE_INITIAL)) {
			erase();
			if (done == null && mode.isUpToDate()) {
				mode.add(pointer());
			}
		}
		refreshCursor();
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC) {
			if (isInState(STATE_DRAG | STATE_DRAG_IN_PROGRESS)) {
				giveUpDrag();
				mode.refresh();
			} else {
				mode.end();
			}
		}
		return true;
	}

	/** Nothing comes of a drag that is under way. */
	void giveUpDrag() {
		setState(STATE_INITIAL);
		erase();
	}

	private void erase() {
		drag = null;
		tag.erase();
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
		mode.end();
	}
}
