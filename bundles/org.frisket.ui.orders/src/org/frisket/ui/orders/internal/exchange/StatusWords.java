package org.frisket.ui.orders.internal.exchange;

import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchWindow;

/** What is said in passing, at the foot of the window. */
final class StatusWords {

	private StatusWords() {
	}

	static void say(IWorkbenchWindow window, String message) {
		IWorkbenchPart part = window.getActivePage() == null ? null : window.getActivePage().getActivePart();
		if (part instanceof IViewPart view) {
			view.getViewSite().getActionBars().getStatusLineManager().setMessage(message);
		}
	}
}
