package org.frisket.ui.bench.internal.screen;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;

/** Tells how finely the screen shows things that a control is seen on: at once, and whenever that changes. */
public final class ScreenWatch {

	private final Control control;
	private final Consumer<Calibration> client;
	private Calibration told;

	/** @param client told on the UI thread for as long as the control lives */
	public ScreenWatch(Control control, Consumer<Calibration> client) {
		this.control = control;
		this.client = client;
		Shell window = control.getShell();
		Listener moved = event -> look();
		window.addListener(SWT.Move, moved);
		Runnable unwatched = Screens.whenChanged(() -> control.getDisplay().asyncExec(this::look));
		control.addListener(SWT.Dispose, event -> {
			unwatched.run();
			if (!window.isDisposed()) {
				window.removeListener(SWT.Move, moved);
			}
		});
		look();
	}

	private void look() {
		if (!control.isDisposed()) {
			Calibration now = Screens.of(control);
			if (!now.equals(told)) {
				told = now;
				client.accept(now);
			}
		}
	}
}
