package org.frisket.ui.orders.internal.docket;

import java.util.Optional;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.orders.Entry;

/** Which job a command is about, and where it is said what came of it. */
final class Selected {

	private Selected() {
	}

	/** The docket view, which is shown beside whatever has the focus. */
	static DocketView view(ExecutionEvent event) throws ExecutionException, PartInitException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		return (DocketView) page.showView(DocketView.ID, null, IWorkbenchPage.VIEW_VISIBLE);
	}

	/** The job that is selected where the focus is, else that of the docket. */
	static Optional<Entry> entry(ExecutionEvent event, DocketView view) {
		Optional<Entry> selected = DocketView.entry(HandlerUtil.getCurrentSelection(event));
		return selected.isPresent() ? selected : view.entry();
	}
}
