package org.frisket.ui.bench.internal.looks;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/**
 * A key that switches when it is tapped, and that switches for as long as it is held when it is held. The keyboard
 * repeats a key that is held; those repetitions count for nothing.
 */
public final class HeldKey {

	/** Whoever holds a key longer than this is looking. */
	private static final int HELD_MS = 400;

	private final Runnable toggle;
	private int pressed;
	private int since;

	/** @param control has the focus while the key is held */
	public HeldKey(Control control, Runnable toggle) {
		this.toggle = toggle;
		control.addListener(SWT.KeyUp, this::released);
		control.addListener(SWT.FocusOut, event -> pressed = 0);
	}

	/** The key went down, or whatever else asked for the switch. */
	public void press(Event trigger) {
		boolean isKey = trigger != null && trigger.type == SWT.KeyDown;
		if (isKey && trigger.keyCode == pressed) {
			return;
		}
		pressed = isKey ? trigger.keyCode : 0;
		since = isKey ? trigger.time : 0;
		toggle.run();
	}

	private void released(Event event) {
		if (pressed != 0 && event.keyCode == pressed) {
			pressed = 0;
			if (event.time - since > HELD_MS) {
				toggle.run();
			}
		}
	}
}
