package org.frisket.ui.views.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * Puts off what a press of the left button sets going until the button is let go, so that a drag can begin at once. It
 * is put off no longer than the pointer moves on: whoever holds the button and waits sees it too.
 */
public final class WhenLetGo {

	private static final int LEFT = 1;
	/** How long the pointer rests before nobody is taken to drag. */
	private static final int REST_MS = 250;

	private final Display display;
	private final Runnable work;
	private final Listener buttons = this::heard;
	private final Runnable rest = this::rested;
	private boolean held;
	private boolean moved;
	private boolean due;

	/** @param work what is put off; done in the thread of the display */
	public WhenLetGo(Display display, Runnable work) {
		this.display = display;
		this.work = work;
		for (int type : new int[] { SWT.MouseDown, SWT.MouseUp, SWT.MouseMove }) {
			display.addFilter(type, buttons);
		}
	}

	private void heard(Event event) {
		if (event.type == SWT.MouseMove) {
			moved = true;
		} else if (event.button == LEFT) {
			held = event.type == SWT.MouseDown;
			if (!held && due) {
				// after what the release itself does
				display.asyncExec(this::doDue);
			}
		}
	}

	/** Has the work done, now or when the button is let go. */
	public void run() {
		if (!held) {
			due = true;
			doDue();
		} else if (!due) {
			due = true;
			moved = false;
			display.timerExec(REST_MS, rest);
		}
	}

	/** Whether the work is put off. */
	public boolean isDue() {
		return due;
	}

	/** Has nothing done that was put off. */
	public void cancel() {
		due = false;
		if (!display.isDisposed()) {
			display.timerExec(-1, rest);
		}
	}

	private void rested() {
		if (due && moved && held) {
			moved = false;
			display.timerExec(REST_MS, rest);
		} else {
			// a release that nobody here hears of ends it too
			held = false;
			doDue();
		}
	}

	private void doDue() {
		if (due) {
			cancel();
			work.run();
		}
	}

	public void dispose() {
		cancel();
		if (!display.isDisposed()) {
			for (int type : new int[] { SWT.MouseDown, SWT.MouseUp, SWT.MouseMove }) {
				display.removeFilter(type, buttons);
			}
		}
	}
}
