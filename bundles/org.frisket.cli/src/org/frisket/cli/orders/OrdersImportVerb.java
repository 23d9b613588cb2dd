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
import org.frisket.orders.intake.OrderFile;
import org.frisket.prepare.pictures.LinkedPictures;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Jobs and orders that come as files. */
@Command(name = "import", description = "Takes jobs, or orders from a table, into the order book, all or none, and answers with their numbers.", sortOptions = false)
final class OrdersImportVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Spec
	private CommandSpec spec;

	@Parameters(arity = "1..*", paramLabel = "FILE", description = "Jobs, .frjob files; or one table of orders, a .csv or .tsv file.")
	private List<Path> files;

	@Option(names = "--again", description = "Also jobs that are in the order book already, as jobs of their own.")
	private boolean again;

	@Mixin
	private CsvImport table = new CsvImport();

	@Override
	public Integer call() throws Refusal {
		List<Entry> taken = files.stream().anyMatch(OrderFile::isTable) ? orders() : jobs();
		if (orders.isJson()) {
			new OrderReport(orders.out(), true).list(taken, LocalDate.now());
		} else {
			taken.forEach(entry -> orders.out().println(entry.number()));
		}
		return Status.DONE;
	}

	private List<Entry> orders() throws Refusal {
		if (files.size() > 1 || again) {
			throw new Refusal("a table of orders comes alone, and without --again");
		}
		return orders.desk(
				studio -> table.run(files.get(0), studio, orders.person(), spec.commandLine().getErr()));
	}

	private List<Entry> jobs() throws Refusal {
		if (table.isSaid()) {
			throw new Refusal("mappings are for tables of orders, which end in .csv or .tsv");
		}
		List<Job> jobs = new ArrayList<>();
		for (Path file : files) {
			Job job = Preparation.load(file);
			LinkedPictures.keep(job).forEach(left -> spec.commandLine().getErr().println(file + ": " + left));
			jobs.add(job);
		}
		return orders.book(book -> book.takeIn(jobs, again, orders.person()));
	}
}
