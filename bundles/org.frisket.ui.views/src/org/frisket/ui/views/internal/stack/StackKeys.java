package org.frisket.ui.views.internal.stack;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** The keys that go from row to row and act on it; those with modifiers are left to the commands. */
final class StackKeys {

	private final StackCanvas canvas;

	StackKeys(StackCanvas canvas) {
		this.canvas = canvas;
		canvas.addListener(SWT.KeyDown, this::pressed);
	}

	private void pressed(Event event) {
		boolean plain = (event.stateMask & SWT.MODIFIER_MASK) == 0;
		if (event.keyCode == SWT.TAB && (plain || (event.stateMask & SWT.SHIFT) != 0)) {
			canvas.traverse(plain ? SWT.TRAVERSE_TAB_NEXT : SWT.TRAVERSE_TAB_PREVIOUS);
		} else if (plain && canvas.bench() != null && !canvas.rows().isEmpty()) {
			act(event.keyCode);
		}
	}

	private void act(int key) {
		int index = canvas.rows().indexOf(canvas.current());
		switch (key) {
		case SWT.ARROW_UP -> go(index - 1);
		case SWT.ARROW_DOWN -> go(index + 1);
		case SWT.HOME -> go(0);
		case SWT.END -> go(canvas.rows().size() - 1);
		case SWT.SPACE -> canvas.actions().selectAllOfLayer();
		case SWT.CR, SWT.KEYPAD_CR -> canvas.actions().rename();
		case SWT.DEL -> canvas.actions().remove();
		case SWT.ESC -> canvas.cancel();
		default -> {
			// left to the commands
		}
		}
	}

	private void go(int index) {
		if (index >= 0 && index < canvas.rows().size()) {
			canvas.actions().go(canvas.rows().get(index));
		}
	}
}
