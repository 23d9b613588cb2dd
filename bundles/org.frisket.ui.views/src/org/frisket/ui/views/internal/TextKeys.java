package org.frisket.ui.views.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;

/**
 * Has the keys of cut, copy, paste and select all mean the text that is being typed in a view, and not the elements on
 * the bench.
 */
public final class TextKeys {

	private final IHandlerService handlers;
	private final List<IHandlerActivation> active = new ArrayList<>();

	public TextKeys(IWorkbenchPartSite site) {
		handlers = site.getService(IHandlerService.class);
	}

	public void activate() {
		if (active.isEmpty()) {
			activate(IWorkbenchCommandConstants.EDIT_CUT, Text::cut, Combo::cut);
			activate(IWorkbenchCommandConstants.EDIT_COPY, Text::copy, Combo::copy);
			activate(IWorkbenchCommandConstants.EDIT_PASTE, Text::paste, Combo::paste);
			activate(IWorkbenchCommandConstants.EDIT_SELECT_ALL, Text::selectAll,
					combo -> combo.setSelection(new Point(0, combo.getText().length())));
		}
	}

	public void deactivate() {
		handlers.deactivateHandlers(active);
		active.clear();
	}

	private void activate(String command, Consumer<Text> onText, Consumer<Combo> onCombo) {
		active.add(handlers.activateHandler(command, new AbstractHandler() {
			@Override
			public Object execute(ExecutionEvent event) {
				Control focus = Display.getCurrent().getFocusControl();
				if (focus instanceof Text text) {
					onText.accept(text);
				} else if (focus instanceof Combo combo) {
					onCombo.accept(combo);
				}
				return null;
			}
		}));
	}
}
