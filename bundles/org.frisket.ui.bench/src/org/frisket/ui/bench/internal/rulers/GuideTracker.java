package org.frisket.ui.bench.internal.rulers;

import org.eclipse.draw2d.Cursors;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.model.Guide;
import org.frisket.ui.bench.internal.snap.SnapKey;

/** Chooses a guide, drags it, and asks for its exact place at a double click. */
final class GuideTracker extends AbstractTool implements DragTracker {

	private final Guides guides;
	private final Guide guide;
	private final SnapKey key = new SnapKey();
	private GuideDrag drag;

	GuideTracker(Guides guides, Guide guide) {
		this.guides = guides;
		this.guide = guide;
	}

	@Override
	protected String getCommandName() {
		return REQ_MOVE;
	}

	@Override
	protected Cursor calculateCursor() {
		return guide.isAcross() ? Cursors.SIZENS : Cursors.SIZEWE;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		setState(button == 1 ? STATE_DRAG : STATE_TERMINAL);
		if (button == 1) {
			guides.viewer().deselectAll();
			guides.choose(guide);
		}
		return true;
	}

	@Override
	protected boolean handleDragStarted() {
		if (stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS)) {
			drag = new GuideDrag(guides, guide, guide.isAcross());
		}
		return true;
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			show();
		}
		return true;
	}

	private void show() {
		drag.to(getLocation().x, getLocation().y, key.isHeld(getCurrentInput().isAltKeyDown()));
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			// over the ruler the pointer may not have been heard of before
			show();
			drag.finish();
		}
		setState(STATE_TERMINAL);
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC) {
			erase();
			setState(STATE_INVALID);
		}
		keyTurned(event, true);
		return true;
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		keyTurned(event, false);
		return true;
	}

	private void keyTurned(KeyEvent event, boolean down) {
		if (key.turned(event.keyCode, down) && isInState(STATE_DRAG_IN_PROGRESS)) {
			show();
		}
	}

	@Override
	protected boolean handleDoubleClick(int button) {
		if (button == 1) {
			setState(STATE_TERMINAL);
			guides.moveTyped(guide);
		}
		return true;
	}

	@Override
	public void commitDrag() {
		// the edit is made when the button is let go
	}

	private void erase() {
		if (drag != null) {
			drag.erase();
		}
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
	}
}
