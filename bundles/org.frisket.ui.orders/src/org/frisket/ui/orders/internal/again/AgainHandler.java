package org.frisket.ui.orders.internal.again;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.orders.Entry;
import org.frisket.ui.orders.internal.OrderDesk;

/** Has the selected job ordered again, and selects the new one. */
public final class AgainHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		if (HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection selection
				&& selection.getFirstElement() instanceof Entry entry) {
			IWorkbenchPart part = HandlerUtil.getActivePart(event);
			new AgainDialog(HandlerUtil.getActiveShellChecked(event), entry, order -> select(part, order)).open();
		}
		return null;
	}

	/** As soon as the desk has seen it, since a list selects nothing that it does not show. */
	private static void select(IWorkbenchPart part, Entry order) {
		OrderDesk desk = OrderDesk.get();
		Runnable[] once = new Runnable[1];
		once[0] = () -> {
			if (desk.find(order.number()).isPresent()) {
				desk.removeListener(once[0]);
				if (part != null && part.getSite().getSelectionProvider() != null) {
					part.getSite().getSelectionProvider().setSelection(new StructuredSelection(order));
				}
			}
		};
		desk.addListener(once[0]);
		once[0].run();
	}
}
