package org.frisket.cli.orders;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.geometry.Monitor;
import org.frisket.model.JobFile;
import org.frisket.orders.OrderBook;
import org.frisket.orders.exchange.XjdfWriter;
import org.frisket.orders.paper.TicketMaker;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A job as a file. */
@Command(name = "export", description = "Writes a job of the order book as a .frjob file, or as a job ticket for other systems, an .xjdf file.", sortOptions = false)
final class OrdersExportVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(paramLabel = "NUMBER", description = "Of the job.")
	private long number;

	@Option(names = "--out", paramLabel = "FILE", required = true, description = "The file, which ends in .frjob or .xjdf.")
	private Path file;

	@Option(names = "--art", paramLabel = "FILE", description = "A file with what is printed, for a ticket to name; may be given several times.")
	private List<Path> art = List.of();

	@Override
	public Integer call() throws Refusal {
		boolean ticket = file.toString().endsWith(XjdfWriter.ENDING);
		if (!ticket && !file.toString().endsWith(JobFile.ENDING)) {
			throw new Refusal("--out: “" + file + "” ends neither in " + JobFile.ENDING + " nor in " + XjdfWriter.ENDING);
		}
		if (!ticket && !art.isEmpty()) {
			throw new Refusal("--art is for job tickets, which end in " + XjdfWriter.ENDING);
		}
		return orders.desk(studio -> {
			if (ticket) {
				new TicketMaker(studio, new JobPreparer(FontLibraries.installed()), Clock.systemDefaultZone()).write(number, art,
						file, Monitor.NONE);
			} else {
				JobFile.save(new OrderBook(studio).open(number).job(), file);
			}
			return Status.DONE;
		});
	}
}
