package org.frisket.ui.bench.internal.editor;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;

/** Tells when the user comes back to a part, from another one or from another window. */
final class BackWatch implements IPartListener2 {

	private final IWorkbenchPart part;
	private final Runnable told;
	private final Shell shell;
	private final Listener activated;

	BackWatch(IWorkbenchPart part, Runnable told) {
		this.part = part;
		this.told = told;
		shell = part.getSite().getShell();
		activated = event -> told.run();
		part.getSite().getPage().addPartListener(this);
		shell.addListener(SWT.Activate, activated);
	}

	void close() {
		part.getSite().getPage().removePartListener(this);
		if (!shell.isDisposed()) {
			shell.removeListener(SWT.Activate, activated);
		}
	}

	@Override
	public void partActivated(IWorkbenchPartReference reference) {
		if (reference.getPart(false) == part) {
			told.run();
		}
	}
}
