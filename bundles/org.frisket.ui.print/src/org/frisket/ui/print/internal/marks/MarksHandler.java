package org.frisket.ui.print.internal.marks;

import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command at the marks; which one is named after the class in the contribution. */
public final class MarksHandler extends AbstractHandler implements IExecutableExtension {

	private Consumer<MarksDesk> action;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data)
			throws CoreException {
		action = switch (String.valueOf(data)) {
		case "place" -> MarksDesk::placeMarks; //$NON-NLS-1$
		case "remove" -> MarksDesk::removeMarks; //$NON-NLS-1$
		case "scan" -> MarksDesk::loadScan; //$NON-NLS-1$
		case "forget" -> MarksDesk::forgetMeasures; //$NON-NLS-1$
		case "measure" -> MarksDesk::measure; //$NON-NLS-1$
		case "lengths" -> MarksDesk::toggleLengths; //$NON-NLS-1$
		case "underlay" -> MarksDesk::toggleScan; //$NON-NLS-1$
		case "nextSheet" -> MarksDesk::nextSheet; //$NON-NLS-1$
		default -> throw new CoreException(Status.error("no command of the marks is called " + data)); //$NON-NLS-1$
		};
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof MarksView view && view.hasSheet()) {
			action.accept(view.desk());
		}
		return null;
	}
}
