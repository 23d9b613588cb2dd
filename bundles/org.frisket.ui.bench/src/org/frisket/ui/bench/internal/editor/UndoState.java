package org.frisket.ui.bench.internal.editor;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchSite;
import org.eclipse.ui.commands.ICommandService;

/** Has menu and tool bar name what can be undone now. */
final class UndoState {

	private UndoState() {
	}

	static void announce(IWorkbenchSite site) {
		ICommandService commands = site.getService(ICommandService.class);
		commands.refreshElements(IWorkbenchCommandConstants.EDIT_UNDO, null);
		commands.refreshElements(IWorkbenchCommandConstants.EDIT_REDO, null);
		site.getService(IEventBroker.class).send(UIEvents.REQUEST_ENABLEMENT_UPDATE_TOPIC, UIEvents.ALL_ELEMENT_ID);
	}
}
