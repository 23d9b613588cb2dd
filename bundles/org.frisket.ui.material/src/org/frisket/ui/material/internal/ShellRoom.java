package org.frisket.ui.material.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;

/** Room in a dialog for what is said in it after it was opened. */
public final class ShellRoom {

	private ShellRoom() {
	}

	/** Makes a dialog as high as what it shows now, if it is not yet, and the screen is. @param shell null for none yet */
	public static void fit(Shell shell) {
		if (shell != null && shell.isVisible()) {
			shell.layout(true, true);
			int wanted = shell.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
			if (wanted > shell.getSize().y) {
				shell.setSize(shell.getSize().x, Math.min(wanted, shell.getMonitor().getClientArea().height));
			}
		}
	}
}
