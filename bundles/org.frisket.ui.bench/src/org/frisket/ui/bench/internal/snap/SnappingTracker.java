package org.frisket.ui.bench.internal.snap;

import org.eclipse.gef.DragTracker;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/** A drag with the left button that is shown as it goes: Alt keeps everything from holding it, Escape gives up. */
public abstract class SnappingTracker extends AbstractTool implements DragTracker {

	private final SnapKey key = new SnapKey();

	/** Shows what would come of it with the pointer where it is and the keys that are held. */
	protected abstract void show();

	/** Shows nothing of it any more. */
	protected abstract void erase();

	/** Makes it so; what was shown is shown still. */
	protected abstract void finish();

	/** Whether nothing shall hold the drag. */
	protected final boolean isFree() {
		return key.isHeld(getCurrentInput().isAltKeyDown());
	}

	@Override
	protected boolean handleButtonDown(int button) {
		setState(button == 1 ? STATE_DRAG : STATE_TERMINAL);
		return true;
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		showDrag();
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			finish();
		}
		setState(STATE_TERMINAL);
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC) {
			erase();
			setState(STATE_INVALID);
		} else {
			key.turned(event.keyCode, true);
			showDrag();
		}
		return true;
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		key.turned(event.keyCode, false);
		showDrag();
		return true;
	}

	private void showDrag() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			show();
		}
	}

	@Override
	public void commitDrag() {
		// the edit is made when the button is let go
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
	}
}
