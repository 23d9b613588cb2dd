package org.frisket.cli.orders;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.model.JobFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A job as a file. */
@Command(name = "export", description = "Writes a job of the order book as a .frjob file.", sortOptions = false)
final class OrdersExportVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(paramLabel = "NUMBER", description = "Of the job.")
	private long number;

	@Option(names = "--out", paramLabel = "FILE", required = true, description = "The file, which ends in .frjob.")
	private Path file;

	@Override
	public Integer call() throws Refusal {
		if (!file.toString().endsWith(JobFile.ENDING)) {
			throw new Refusal("--out: “" + file + "” does not end in " + JobFile.ENDING);
		}
		return orders.book(book -> {
			JobFile.save(book.open(number).job(), file);
			return Status.DONE;
		});
	}
}
