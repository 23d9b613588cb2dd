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
import org.frisket.ui.orders.Orders;

/** Opens a job of the order book on the bench, by the command that whoever can do so contributes. */
final class OpenJob {

	private OpenJob() {
	}

	/** @return whether somebody has taken it on */
	static boolean run(IServiceLocator services, long number) throws ExecutionException {
		Command command = services.getService(ICommandService.class).getCommand(Orders.OPEN_JOB_COMMAND_ID);
		ParameterizedCommand open = command.isDefined()
				? ParameterizedCommand.generateCommand(command, Map.of(Orders.OPEN_JOB_NUMBER, Long.toString(number)))
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
