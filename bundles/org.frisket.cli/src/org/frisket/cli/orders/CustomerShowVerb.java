package org.frisket.cli.orders;

import java.time.LocalDate;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.Entry;
import org.frisket.orders.customers.Customer;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** One of them. */
@Command(name = "show", description = "Shows what is known of a customer, and its jobs.", sortOptions = false)
final class CustomerShowVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersCustomerVerb group;

	@Parameters(paramLabel = "NAME", description = "Of the customer.")
	private String name;

	@Override
	public Integer call() throws Refusal {
		return group.customers(customers -> {
			Customer customer = customers.find(name);
			LocalDate today = LocalDate.now();
			if (group.orders().isJson()) {
				JsonObject object = OrdersCustomerVerb.object(customer);
				JsonArray jobs = new JsonArray();
				customers.jobs(customer).forEach(entry -> jobs.add(OrderReport.object(entry, today)));
				object.add("jobs", jobs);
				group.print(object);
			} else {
				group.print(customer);
				for (Entry entry : customers.jobs(customer)) {
					group.orders().out().println(OrderReport.line(entry, today));
				}
			}
			return Status.DONE;
		});
	}
}
