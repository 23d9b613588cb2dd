package org.frisket.ui.bench.internal.snap;

import org.eclipse.swt.SWT;

/**
 * Whether the key is held that keeps everything from holding: Alt. Many window managers take a press of the button with
 * Alt for themselves, but none a press of Alt while the button is down already; so it is pressed after the drag has
 * begun.
 */
public final class SnapKey {

	private boolean down;
	private boolean seen;

	/** Takes a key that went down or up during a drag. Says whether it was this key. */
	public boolean turned(int code, boolean isDown) {
		if (code != SWT.ALT) {
			return false;
		}
		down = isDown;
		seen = true;
		return true;
	}

	/** @param modifier whether the last event of the pointer came with it */
	public boolean isHeld(boolean modifier) {
		return seen ? down : modifier;
	}
}
