package org.frisket.ui.orders.internal.backup;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks for a file, and backs the studio up or brings a backup back. */
public final class BackupHandler extends AbstractHandler implements IExecutableExtension {

	private static final String RESTORE = "restore"; //$NON-NLS-1$

	private boolean restore;

	@Override
	public void setInitializationData(IConfigurationElement element, String name, Object word) {
		restore = RESTORE.equals(word);
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		Shell shell = HandlerUtil.getActiveShellChecked(event);
		if (restore) {
			new RestoreRun(shell).askForFile();
		} else {
			new BackupRun(shell).askForFile();
		}
		return null;
	}
}
