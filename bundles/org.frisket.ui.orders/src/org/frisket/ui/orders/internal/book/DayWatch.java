package org.frisket.ui.orders.internal.book;

import java.time.LocalDate;

import org.eclipse.swt.widgets.Control;

/** Notices that another day has begun while a control is there: what is late is so since midnight. */
final class DayWatch {

	private static final int LOOK_MS = 60_000;

	private final Control control;
	private final Runnable begun;
	private LocalDate today = LocalDate.now();

	DayWatch(Control control, Runnable begun) {
		this.control = control;
		this.begun = begun;
	}

	void start() {
		control.getDisplay().timerExec(LOOK_MS, this::look);
	}

	private void look() {
		if (!control.isDisposed()) {
			if (!today.equals(LocalDate.now())) {
				today = LocalDate.now();
				begun.run();
			}
			start();
		}
	}
}
