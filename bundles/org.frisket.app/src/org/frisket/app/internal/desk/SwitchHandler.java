package org.frisket.app.internal.desk;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes to the order desk or to the bench; which, stands behind the name of the class. */
public final class SwitchHandler extends AbstractHandler implements IExecutableExtension {

	private Side side = Side.BENCH;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		side = Side.valueOf(String.valueOf(data).toUpperCase(java.util.Locale.ROOT));
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		try {
			side.show(HandlerUtil.getActiveWorkbenchWindowChecked(event));
		} catch (WorkbenchException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
		return null;
	}
}
