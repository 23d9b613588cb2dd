package org.frisket.ui.bench.internal.handlers.sight;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.ui.bench.internal.screen.CalibrationDialog;

/** Has the screen measured that the window stands on. */
public final class MeasureScreenHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		new CalibrationDialog(HandlerUtil.getActiveShellChecked(event)).open();
		return null;
	}
}
