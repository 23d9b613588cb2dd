package org.frisket.ui.orders.internal.book;

import java.util.Map;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.NotEnabledException;
import org.eclipse.core.commands.NotHandledException;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;

/** Opens a job of the order book on the bench, by the command that whoever can do so contributes. */
final class OpenJob {

	private static final String COMMAND = "org.frisket.ui.orders.command.openJob"; //$NON-NLS-1$
	private static final String NUMBER = COMMAND + ".number"; //$NON-NLS-1$

	private OpenJob() {
	}

	/** @return whether somebody has taken it on */
	static boolean run(IServiceLocator services, long number) throws ExecutionException {
		Command command = services.getService(ICommandService.class).getCommand(COMMAND);
		ParameterizedCommand open = command.isDefined()
				? ParameterizedCommand.generateCommand(command, Map.of(NUMBER, Long.toString(number)))
				: null;
		if (open == null) {
			return false;
		}
		try {
			services.getService(IHandlerService.class).executeCommand(open, null);
			return true;
		} catch (NotDefinedException | NotEnabledException | NotHandledException nobody) {
			return false;
		}
	}
}
