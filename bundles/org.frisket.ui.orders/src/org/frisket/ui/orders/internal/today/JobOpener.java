package org.frisket.ui.orders.internal.today;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.Parameterization;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;

/**
 * Lays a job of the order book on the bench with its sheets before it: by the command that keeps what is changed there in
 * the order book, where there is one; else as a file in the studio's folder.
 */
final class JobOpener {

	private static final String COMMAND_ID = "org.frisket.ui.orders.command.openJob"; //$NON-NLS-1$
	private static final String NUMBER = COMMAND_ID + ".number"; //$NON-NLS-1$
	private static final String SHEETS_ID = "org.frisket.ui.sheets.sheets"; //$NON-NLS-1$
	private static final String FOLDER = "runs"; //$NON-NLS-1$

	private final IWorkbenchPartSite site;

	JobOpener(IWorkbenchPartSite site) {
		this.site = site;
	}

	/** @param name of the file, if there has to be one @param told what is wrong */
	void open(long number, String name, Consumer<String> told) {
		Command command = site.getService(ICommandService.class).getCommand(COMMAND_ID);
		try {
			if (command.isDefined() && command.getParameter(NUMBER) != null) {
				ParameterizedCommand open = new ParameterizedCommand(command, new Parameterization[] {
						new Parameterization(command.getParameter(NUMBER), Long.toString(number)) });
				site.getService(IHandlerService.class).executeCommand(open, null);
				showSheets(told);
				return;
			}
		} catch (CommandException cannot) {
			told.accept(String.valueOf(cannot.getMessage()));
			return;
		}
		new StoreJob<>(Messages.JobOpener_job, () -> {
			Path file = Studio.folder().openForWriting().path().resolve(FOLDER).resolve(name + JobFile.ENDING);
			Files.createDirectories(file.getParent());
			Job job = OrderDesk.book().open(number).job();
			JobFile.save(job, file);
			return file;
		}, file -> {
			try {
				Bench.open(site.getPage(), file);
				showSheets(told);
			} catch (PartInitException cannot) {
				told.accept(cannot.getMessage());
			}
		}, told).schedule();
	}

	private void showSheets(Consumer<String> told) {
		try {
			site.getPage().showView(SHEETS_ID);
		} catch (PartInitException notThere) {
			told.accept(notThere.getMessage());
		}
	}
}
