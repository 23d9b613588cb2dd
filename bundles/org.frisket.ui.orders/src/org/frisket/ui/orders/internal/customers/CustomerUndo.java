package org.frisket.ui.orders.internal.customers;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.menus.UIElement;

/** Has undo and redo mean the customers while their view is active; the menu names the step. */
final class CustomerUndo {

	private final CustomerDesk desk = CustomerDesk.get();
	private final ICommandService commands;
	private final Step undo = new Step(true);
	private final Step redo = new Step(false);
	private final Consumer<Optional<String>> after;

	CustomerUndo(IWorkbenchPartSite site, Consumer<Optional<String>> after) {
		this.after = after;
		commands = site.getService(ICommandService.class);
		IHandlerService handlers = site.getService(IHandlerService.class);
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_UNDO, undo);
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_REDO, redo);
	}

	/** Another step is the next. */
	void refresh() {
		undo.enable();
		redo.enable();
		commands.refreshElements(IWorkbenchCommandConstants.EDIT_UNDO, null);
		commands.refreshElements(IWorkbenchCommandConstants.EDIT_REDO, null);
	}

	private final class Step extends AbstractHandler implements IElementUpdater {

		private final boolean back;

		Step(boolean back) {
			this.back = back;
		}

		private Optional<String> label() {
			return back ? desk.undoLabel() : desk.redoLabel();
		}

		void enable() {
			setBaseEnabled(label().isPresent());
		}

		@Override
		public Object execute(ExecutionEvent event) {
			desk.step(back, after);
			return null;
		}

		@Override
		@SuppressWarnings("rawtypes")
		public void updateElement(UIElement element, Map parameters) {
			element.setText(label().map(label -> NLS.bind(back ? Messages.CustomerUndo_undo : Messages.CustomerUndo_redo, label))
					.orElse(back ? Messages.CustomerUndo_noUndo : Messages.CustomerUndo_noRedo));
		}
	}
}
