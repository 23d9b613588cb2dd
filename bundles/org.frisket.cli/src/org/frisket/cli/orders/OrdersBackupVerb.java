package org.frisket.cli.orders;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.work.backup.StudioBackup;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** The whole studio as a file. */
@Command(name = "backup", description = "Writes the whole studio into one file: jobs, customers, runs, stock, leftovers, settings, and what lies in its folder.", sortOptions = false)
final class OrdersBackupVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(arity = "0..1", paramLabel = "FILE", description = "The file to write, a zip file.")
	private Path file;

	@Option(names = "--out", paramLabel = "FILE", description = "The same.")
	private Path out;

	@Override
	public Integer call() throws Refusal {
		if ((file == null) == (out == null)) {
			throw new Refusal("say which file to write");
		}
		return orders.studio(studio -> {
			try {
				new StudioBackup(studio).write(file == null ? out : file, null);
				return Status.DONE;
			} catch (IOException e) {
				throw new Refusal(e);
			}
		});
	}
}
