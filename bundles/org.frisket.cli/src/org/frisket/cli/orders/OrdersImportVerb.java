package org.frisket.cli.orders;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.Preparation;
import org.frisket.model.Job;
import org.frisket.orders.Entry;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Jobs that come as files. */
@Command(name = "import", description = "Takes jobs into the order book, and answers with their numbers.", sortOptions = false)
final class OrdersImportVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(arity = "1..*", paramLabel = "FILE", description = "A job, a .frjob file.")
	private List<Path> files;

	@Override
	public Integer call() throws Refusal {
		List<Job> jobs = new ArrayList<>();
		for (Path file : files) {
			jobs.add(Preparation.load(file));
		}
		List<Entry> taken = new ArrayList<>();
		for (Job job : jobs) {
			taken.add(orders.book(book -> book.takeIn(job, orders.person())));
			if (!orders.isJson()) {
				orders.out().println(taken.get(taken.size() - 1).number());
			}
		}
		if (orders.isJson()) {
			new OrderReport(orders.out(), true).list(taken, LocalDate.now());
		}
		return Status.DONE;
	}
}
