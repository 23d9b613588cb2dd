package org.frisket.cli.orders;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.Entry;
import org.frisket.orders.NewOrder;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** One more job. */
@Command(name = "add", description = "Takes an order, and answers with the number of its job once it is kept.", sortOptions = false)
final class OrdersAddVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Option(names = "--title", paramLabel = "TITLE", required = true, description = "What it is called.")
	private String title;

	@Option(names = "--customer", paramLabel = "NAME", defaultValue = "", description = "Whom it is for.")
	private String customer;

	@Option(names = "--due", paramLabel = "DAY", description = "When it must be ready, such as 2027-03-01.")
	private LocalDate due;

	@Option(names = "--quantity", paramLabel = "COUNT", defaultValue = "1", description = "How many copies (default ${DEFAULT-VALUE}).")
	private int quantity;

	@Option(names = "--notes", paramLabel = "TEXT", defaultValue = "", description = "Free remarks.")
	private String notes;

	@Override
	public Integer call() throws Refusal {
		Entry added = orders.book(book -> book.add(new NewOrder(title, customer, Optional.ofNullable(due), quantity, notes),
				orders.person()));
		if (orders.isJson()) {
			new OrderReport(orders.out(), true).one(added, List.of(), LocalDate.now());
		} else {
			orders.out().println(added.number());
		}
		return Status.DONE;
	}
}
