package org.frisket.ui.bench.internal.parts;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.frisket.prepare.Finding;

/** The pointer on the flags, which lie above everything on the bench: hovering tells more, a click chooses. */
final class FlagPointer {

	private final Control canvas;
	private final FindingFlags flags;
	private final Consumer<Finding> clicked;
	private final BooleanSupplier deaf;
	private final Listener moved = this::move;
	private final Listener pressed = this::press;

	/** @param deaf whether presses are meant for what lies below the flags */
	FlagPointer(Control canvas, FindingFlags flags, Consumer<Finding> clicked, BooleanSupplier deaf) {
		this.deaf = deaf;
		this.canvas = canvas;
		this.flags = flags;
		this.clicked = clicked;
		canvas.addListener(SWT.MouseMove, moved);
		canvas.addListener(SWT.MouseExit, moved);
		// before the tools of the bench, for which there are no flags
		display().addFilter(SWT.MouseDown, pressed);
	}

	private Display display() {
		return canvas.getDisplay();
	}

	private void move(Event event) {
		boolean dragging = (event.stateMask & SWT.BUTTON_MASK) != 0;
		if (event.type == SWT.MouseExit) {
			flags.hover(Integer.MIN_VALUE, Integer.MIN_VALUE);
		} else if (!dragging) {
			flags.hover(event.x, event.y);
		}
	}

	private void press(Event event) {
		if (event.widget == canvas && event.button == 1 && (event.stateMask & SWT.MODIFIER_MASK) == 0
				&& !deaf.getAsBoolean()) {
			Finding finding = flags.at(event.x, event.y);
			if (finding != null) {
				event.type = SWT.None;
				canvas.setFocus();
				clicked.accept(finding);
			}
		}
	}

	void dispose() {
		if (!canvas.isDisposed()) {
			canvas.removeListener(SWT.MouseMove, moved);
			canvas.removeListener(SWT.MouseExit, moved);
			display().removeFilter(SWT.MouseDown, pressed);
		} else if (Display.getCurrent() != null) {
			Display.getCurrent().removeFilter(SWT.MouseDown, pressed);
		}
	}
}
