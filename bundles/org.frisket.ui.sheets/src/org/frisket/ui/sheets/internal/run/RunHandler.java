package org.frisket.ui.sheets.internal.run;

import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command of the run; which one is named after the class in the contribution. */
public final class RunHandler extends AbstractHandler implements IExecutableExtension {

	private Consumer<RunActions> action;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data)
			throws CoreException {
		action = switch (String.valueOf(data)) {
		case "play" -> RunActions::play; //$NON-NLS-1$
		case "faster" -> RunActions::faster; //$NON-NLS-1$
		case "slower" -> RunActions::slower; //$NON-NLS-1$
		case "nextStroke" -> RunActions::nextStroke; //$NON-NLS-1$
		case "previousStroke" -> RunActions::previousStroke; //$NON-NLS-1$
		case "nextPart" -> RunActions::nextPart; //$NON-NLS-1$
		case "previousPart" -> RunActions::previousPart; //$NON-NLS-1$
		case "nextTool" -> RunActions::nextTool; //$NON-NLS-1$
		case "previousTool" -> RunActions::previousTool; //$NON-NLS-1$
		case "travel" -> RunActions::toggleTravel; //$NON-NLS-1$
		case "calm" -> RunActions::toggleCalm; //$NON-NLS-1$
		case "sheet" -> RunActions::writeSheet; //$NON-NLS-1$
		default -> throw new CoreException(Status.error("no command of the run is called " + data)); //$NON-NLS-1$
		};
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof RunView view) {
			action.accept(view.actions());
		}
		return null;
	}
}
