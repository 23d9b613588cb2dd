package org.frisket.ui.views.internal.stack;

import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.handlers.HandlerUtil;

/**
 * A command on the layer or the elements that the keys of the stack act on; which one is named after the class in the
 * contribution.
 */
public final class LayerHandler extends AbstractHandler implements IExecutableExtension {

	private Consumer<StackActions> action;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data)
			throws CoreException {
		action = switch (String.valueOf(data)) {
		case "rename" -> StackActions::rename; //$NON-NLS-1$
		case "raise" -> StackActions::raise; //$NON-NLS-1$
		case "lower" -> StackActions::lower; //$NON-NLS-1$
		case "visible" -> StackActions::toggleVisible; //$NON-NLS-1$
		case "locked" -> StackActions::toggleLocked; //$NON-NLS-1$
		case "colour" -> StackActions::chooseColour; //$NON-NLS-1$
		case "stock" -> StackActions::nameStock; //$NON-NLS-1$
		case "add" -> StackActions::addLayer; //$NON-NLS-1$
		case "duplicate" -> StackActions::duplicate; //$NON-NLS-1$
		case "remove" -> StackActions::remove; //$NON-NLS-1$
		default -> throw new CoreException(Status.error("no command of the stack is called " + data)); //$NON-NLS-1$
		};
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof StackView stack && stack.note().isEmpty()) {
			action.accept(stack.canvas().actions());
		}
		return null;
	}
}
