package org.frisket.ui.orders.internal.today;

import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.views.Views;

/** Lays a job of the order book on the bench with its sheets before it; what is changed there is kept in the order book. */
final class JobOpener {

	private final IWorkbenchPartSite site;

	JobOpener(IWorkbenchPartSite site) {
		this.site = site;
	}

	/** @param told what is wrong */
	void open(long number, Consumer<String> told) {
		try {
			ParameterizedCommand open = ParameterizedCommand.generateCommand(
					site.getService(ICommandService.class).getCommand(Orders.OPEN_JOB_COMMAND_ID),
					Map.of(Orders.OPEN_JOB_NUMBER, Long.toString(number)));
			site.getService(IHandlerService.class).executeCommand(open, null);
			site.getPage().showView(Views.SHEETS_ID);
		} catch (CommandException | PartInitException cannot) {
			told.accept(String.valueOf(cannot.getMessage()));
		}
	}
}
