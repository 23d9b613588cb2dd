package org.frisket.ui.studio;

import java.util.Map;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.menus.UIElement;

/** Has undo and redo mean the steps of one history while its view is active; the menu names the step. */
public final class StepUndo {

	/** What can be taken back, and made again. Only for the UI thread. */
	public interface Steps {

		/** The step that is the next. @param back to be taken back, or else made again */
		Optional<String> label(boolean back);

		/** Takes it. */
		void step(boolean back);
	}

	private final Steps steps;
	private final ICommandService commands;
	private final Step undo = new Step(true);
	private final Step redo = new Step(false);

	public StepUndo(IWorkbenchPartSite site, Steps steps) {
		this.steps = steps;
		commands = site.getService(ICommandService.class);
		IHandlerService handlers = site.getService(IHandlerService.class);
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_UNDO, undo);
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_REDO, redo);
		refresh();
	}

	/** Another step is the next. */
	public void refresh() {
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

		void enable() {
			setBaseEnabled(steps.label(back).isPresent());
		}

		@Override
		public Object execute(ExecutionEvent event) {
			steps.step(back);
			return null;
		}

		@Override
		@SuppressWarnings("rawtypes")
		public void updateElement(UIElement element, Map parameters) {
			element.setText(steps.label(back)
					.map(label -> NLS.bind(back ? Messages.StepUndo_undo : Messages.StepUndo_redo, label))
					.orElse(back ? Messages.StepUndo_noUndo : Messages.StepUndo_noRedo));
		}
	}
}
