package org.frisket.ui.views.internal.stack;

import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command on the layer that the keys of the stack act on; which one is named after the class in the contribution. */
public final class LayerHandler extends AbstractHandler implements IExecutableExtension {

	private Consumer<StackCanvas> action;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data)
			throws CoreException {
		action = switch (String.valueOf(data)) {
		case "rename" -> StackCanvas::rename; //$NON-NLS-1$
		case "raise" -> canvas -> canvas.raise(1); //$NON-NLS-1$
		case "lower" -> canvas -> canvas.raise(-1); //$NON-NLS-1$
		case "visible" -> StackCanvas::toggleVisible; //$NON-NLS-1$
		case "locked" -> StackCanvas::toggleLocked; //$NON-NLS-1$
		default -> throw new CoreException(Status.error("no command on layers is called " + data)); //$NON-NLS-1$
		};
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof StackView stack && stack.note().isEmpty()) {
			action.accept(stack.canvas());
		}
		return null;
	}
}
