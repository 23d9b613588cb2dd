package org.frisket.ui.bench.internal.typing;

import org.eclipse.draw2d.Cursors;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.graphics.Cursor;

/** Selects the letters of the wording that is typed as the pointer is drawn over them; the press set the caret. */
final class TextTracker extends AbstractTool implements DragTracker {

	private final TypingPointer pointer;

	TextTracker(TypingPointer pointer) {
		this.pointer = pointer;
	}

	@Override
	public void commitDrag() {
		// there is nothing to commit: the selection follows the pointer
	}

	@Override
	protected String getCommandName() {
		return "select letters"; //$NON-NLS-1$
	}

	@Override
	protected Cursor calculateCursor() {
		return Cursors.IBEAM;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		return stateTransition(STATE_INITIAL, button == 1 ? STATE_DRAG : STATE_INVALID);
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			pointer.moveTo(getLocation().x, getLocation().y, true);
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		return stateTransition(STATE_DRAG | STATE_DRAG_IN_PROGRESS, STATE_TERMINAL);
	}
}
