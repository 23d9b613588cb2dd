package org.frisket.ui.orders.internal.customers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;

/** What can be done in the view of customers; which of it stands behind the name of the class. */
public final class CustomerHandler extends AbstractHandler implements IExecutableExtension {

	private String what;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		what = String.valueOf(data);
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof CustomersView view) {
			switch (what) {
			case "create" -> view.actions().create(); //$NON-NLS-1$
			case "keep" -> view.actions().keep(); //$NON-NLS-1$
			case "merge" -> view.actions().merge(); //$NON-NLS-1$
			case "export" -> view.actions().askForExport(); //$NON-NLS-1$
			case "erase" -> view.actions().erase(); //$NON-NLS-1$
			default -> throw new IllegalArgumentException(what);
			}
		}
		return null;
	}
}
