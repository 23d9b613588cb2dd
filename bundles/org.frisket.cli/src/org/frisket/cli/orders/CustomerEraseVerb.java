package org.frisket.cli.orders;

import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Erasure;

import com.google.gson.Gson;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** None of them any more. */
@Command(name = "erase", description = "Forgets who a customer was, also in the documents of its jobs. It cannot be undone; backups keep what they have.", sortOptions = false)
final class CustomerEraseVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersCustomerVerb group;

	@Parameters(paramLabel = "NAME", description = "Of the customer.")
	private String name;

	@Option(names = "--yes", description = "It is meant.")
	private boolean meant;

	@Override
	public Integer call() throws Refusal {
		return group.customers(customers -> {
			Customer customer = customers.find(name);
			if (!meant) {
				throw new Refusal("“" + customer.name() + "”, with jobs: " + customers.jobs(customer).size()
						+ ", is forgotten for good; say --yes if that is meant");
			}
			print(customers.erase(customer, group.orders().person()));
			return Status.DONE;
		});
	}

	private void print(Erasure erasure) {
		if (group.orders().isJson()) {
			JsonObject object = OrdersCustomerVerb.object(erasure.customer());
			object.add("jobs", new Gson().toJsonTree(erasure.jobs()));
			object.add("stillNamed", new Gson().toJsonTree(erasure.stillNamed()));
			group.print(object);
			return;
		}
		group.orders().out().println("now called “" + erasure.customer().name() + "”; jobs changed: "
				+ erasure.jobs().size());
		if (!erasure.stillNamed().isEmpty()) {
			group.orders().out().println("the name is still in what is set in type, or in names of elements, of jobs "
					+ String.join(", ", erasure.stillNamed().stream().map(String::valueOf).toList()));
		}
		group.orders().out().println("backups that were made before still have the name; they are for you to delete");
	}
}
