package org.frisket.ui.orders.internal;

import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;
import org.frisket.ui.orders.Orders;

/** Opens a job of the order book on the bench, by the command for it. */
public final class OpenJob {

	private OpenJob() {
	}

	/** @param told why it cannot be opened. @return whether it is being opened */
	public static boolean run(IServiceLocator services, long number, Consumer<String> told) {
		Command command = services.getService(ICommandService.class).getCommand(Orders.OPEN_JOB_COMMAND_ID);
		try {
			services.getService(IHandlerService.class).executeCommand(ParameterizedCommand.generateCommand(command,
					Map.of(Orders.OPEN_JOB_NUMBER, Long.toString(number))), null);
			return true;
		} catch (ExecutionException e) {
			told.accept(String.valueOf(e.getMessage()));
		} catch (CommandException nobody) {
			// taken out of this installation, or not meant for what is in front
			told.accept(NLS.bind(Messages.OpenJob_cannot, number));
		}
		return false;
	}
}
