package org.frisket.ui.orders.internal.reports;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;

/** What can be done in the view of reports; which of it stands behind the name of the class. */
public final class ReportHandler extends AbstractHandler implements IExecutableExtension {

	private String what;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		what = String.valueOf(data);
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof ReportsView view) {
			switch (what) {
			case "next" -> view.go(1); //$NON-NLS-1$
			case "previous" -> view.go(-1); //$NON-NLS-1$
			case "table" -> view.askForTable(); //$NON-NLS-1$
			case "paper" -> view.askForPaper(); //$NON-NLS-1$
			default -> throw new IllegalArgumentException(what);
			}
		}
		return null;
	}
}
