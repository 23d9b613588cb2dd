package org.frisket.ui.orders.internal.today;

import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command at what is to be done; which one is named after the class in the contribution. */
public final class TodayHandler extends AbstractHandler implements IExecutableExtension {

	private Consumer<TodayActions> action;

	@Override
	public void setInitializationData(IConfigurationElement element, String property,
			Object data) throws CoreException {
		action = switch (String.valueOf(data)) {
		case "layTogether" -> TodayActions::layTogether; //$NON-NLS-1$
		case "done" -> TodayActions::done; //$NON-NLS-1$
		case "callOff" -> TodayActions::callOff; //$NON-NLS-1$
		default -> throw new CoreException(Status.error("no command of what is to be done is called " + data)); //$NON-NLS-1$
		};
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof TodayView today) {
			action.accept(today.actions());
		}
		return null;
	}
}
