package org.frisket.app.internal.keys;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the list of keys. */
public final class KeyListHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		new KeyListDialog(HandlerUtil.getActiveWorkbenchWindowChecked(event)).open();
		return null;
	}
}
