package org.frisket.cli.orders;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.work.backup.Restored;
import org.frisket.orders.work.backup.StudioBackup;

import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A backup as the studio. */
@Command(name = "restore", description = "Brings a backup back, into the studio's folder or the database given with --db.", sortOptions = false)
final class OrdersRestoreVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(paramLabel = "FILE", description = "What frisket orders backup wrote.")
	private Path file;

	@Option(names = "--replace", description = "Even if there are jobs, stock or settings already: they are replaced, and kept in a backup beside the studio's folder.")
	private boolean replace;

	@Override
	public Integer call() throws Refusal {
		return orders.studio(studio -> {
			try {
				Restored restored = new StudioBackup(studio).restore(file, replace, null);
				if (orders.isJson()) {
					JsonObject answer = new JsonObject();
					answer.addProperty("rows", restored.rows());
					answer.addProperty("before", restored.kept().map(Path::toString).orElse(null));
					orders.out().println(answer);
				} else {
					orders.out().println(restored.rows() + " rows brought back");
					restored.kept().ifPresent(kept -> orders.out().println("what was there before is kept in " + kept));
				}
				return Status.DONE;
			} catch (IOException e) {
				throw new Refusal(e);
			}
		});
	}
}
