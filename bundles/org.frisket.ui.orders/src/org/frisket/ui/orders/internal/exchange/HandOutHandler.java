package org.frisket.ui.orders.internal.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.orders.Entry;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.docket.DocketView;

/**
 * Writes files of the selected jobs, else of the job of the docket; of which kind, stands behind the name of the class.
 */
public final class HandOutHandler extends AbstractHandler implements IExecutableExtension {

	private HandOutKind kind = HandOutKind.TICKET;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		kind = HandOutKind.valueOf(String.valueOf(data).toUpperCase(Locale.ROOT));
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
		List<Entry> jobs = new ArrayList<>();
		if (HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection some) {
			for (Object each : some.toList()) {
				if (each instanceof Entry job) {
					jobs.add(job);
				}
			}
		}
		if (jobs.isEmpty() && window.getActivePage().findView(Orders.DOCKET_ID) instanceof DocketView docket) {
			docket.entry().ifPresent(jobs::add);
		}
		if (jobs.isEmpty()) {
			StatusWords.say(window, Messages.HandOutHandler_nothing);
		} else {
			HandOut.ask(window, kind, jobs);
		}
		return null;
	}
}
