package org.frisket.cli.orders;

import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** One of two. */
@Command(name = "merge", description = "Makes one customer of two: the jobs of the first go to the second, which stays.", sortOptions = false)
final class CustomerMergeVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersCustomerVerb group;

	@Parameters(index = "0", paramLabel = "NAME", description = "Of the one that goes.")
	private String from;

	@Parameters(index = "1", paramLabel = "INTO", description = "Of the one that stays.")
	private String into;

	@Override
	public Integer call() throws Refusal {
		return group.customers(customers -> {
			group.print(customers.merge(customers.find(from), customers.find(into), group.orders().person()));
			return Status.DONE;
		});
	}
}
