package org.frisket.ui.material.internal.shelf;

import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command at the shelf; which one is named after the class in the contribution. */
public final class ShelfHandler extends AbstractHandler implements IExecutableExtension {

	private Consumer<ShelfActions> action;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data)
			throws CoreException {
		action = switch (String.valueOf(data)) {
		case "create" -> ShelfActions::create; //$NON-NLS-1$
		case "edit" -> ShelfActions::edit; //$NON-NLS-1$
		case "duplicate" -> ShelfActions::duplicate; //$NON-NLS-1$
		case "remove" -> ShelfActions::remove; //$NON-NLS-1$
		case "catalogue" -> ShelfActions::takeFromCatalogue; //$NON-NLS-1$
		case "pack" -> ShelfActions::studyPack; //$NON-NLS-1$
		case "low" -> ShelfActions::toggleLow; //$NON-NLS-1$
		case "import" -> ShelfActions::importTable; //$NON-NLS-1$
		case "export" -> ShelfActions::exportTable; //$NON-NLS-1$
		default -> throw new CoreException(Status.error("no command of the shelf is called " + data)); //$NON-NLS-1$
		};
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof ShelfView shelf) {
			action.accept(shelf.actions());
		}
		return null;
	}
}
