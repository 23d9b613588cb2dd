package org.frisket.cli.orders;

import java.time.LocalDate;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.OrderBook;
import org.frisket.orders.Repeats;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** One job and what became of it. */
@Command(name = "show", description = "Shows a job and its history.", sortOptions = false)
final class OrdersShowVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(paramLabel = "NUMBER", description = "Of the job.")
	private long number;

	@Override
	public Integer call() throws Refusal {
		return orders.desk(studio -> {
			OrderBook book = new OrderBook(studio);
			Repeats repeats = new Repeats(studio);
			new OrderReport(orders.out(), orders.isJson()).one(book.find(number), book.history(number),
					repeats.originals(number), repeats.repeats(number), LocalDate.now());
			return Status.DONE;
		});
	}
}
