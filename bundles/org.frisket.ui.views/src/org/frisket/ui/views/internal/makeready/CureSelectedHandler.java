package org.frisket.ui.views.internal.makeready;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.keys.IBindingService;

/** Cures the finding of the line that is gone to, however far down it stands. */
public final class CureSelectedHandler extends AbstractHandler {

	private static final String COMMAND_ID = "org.frisket.ui.views.command.cureSelected"; //$NON-NLS-1$

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof MakereadyView view) {
			view.cureSelected();
		}
		return null;
	}

	/** How its key is written at the end of an item of a menu; empty if it has none. */
	static String key() {
		String key = PlatformUI.getWorkbench().getService(IBindingService.class).getBestActiveBindingFormattedFor(COMMAND_ID);
		return key == null ? "" : "\t" + key; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
