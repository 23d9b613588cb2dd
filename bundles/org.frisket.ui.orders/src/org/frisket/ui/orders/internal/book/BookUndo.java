package org.frisket.ui.orders.internal.book;

import java.util.List;
import java.util.Map;
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

/** Has undo and redo mean the changes of stages while the order book is active; the menu names the step. */
final class BookUndo {

	private final StageHistory history;
	private final ICommandService commands;
	private final Step undo = new Step(true);
	private final Step redo = new Step(false);
	private final Consumer<List<StageMoves.Refused>> after;

	BookUndo(IWorkbenchPartSite site, StageHistory history, Consumer<List<StageMoves.Refused>> after) {
		this.history = history;
		this.after = after;
		commands = site.getService(ICommandService.class);
		IHandlerService handlers = site.getService(IHandlerService.class);
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_UNDO, undo);
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_REDO, redo);
		refresh();
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

		void enable() {
			setBaseEnabled(history.label(back).isPresent());
		}

		@Override
		public Object execute(ExecutionEvent event) {
			if (back) {
				history.undo(after);
			} else {
				history.redo(after);
			}
			return null;
		}

		@Override
		@SuppressWarnings("rawtypes")
		public void updateElement(UIElement element, Map parameters) {
			String words = back ? Messages.BookUndo_undo : Messages.BookUndo_redo;
			element.setText(history.label(back).map(label -> NLS.bind(words, label))
					.orElse(back ? Messages.BookUndo_noUndo : Messages.BookUndo_noRedo));
		}
	}
}
