package org.frisket.cli.orders;

import java.util.Locale;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.LikeCustomers;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** All of them, or those that may be one. */
@Command(name = "list", description = "Lists customers by name.", sortOptions = false)
final class CustomerListVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersCustomerVerb group;

	@Option(names = "--alike", description = "Lists pairs that may be the same one instead, the likeliest first.")
	private boolean alike;

	@Override
	public Integer call() throws Refusal {
		return group.customers(customers -> {
			JsonArray rows = new JsonArray();
			if (alike) {
				for (LikeCustomers pair : customers.alike()) {
					rows.add(object(pair));
					if (!group.orders().isJson()) {
						group.orders().out().printf("%.2f  %s, %s (%s)%n", pair.likeness(), pair.one().name(),
								pair.other().name(), word(pair));
					}
				}
			} else {
				for (Customer customer : customers.list()) {
					rows.add(OrdersCustomerVerb.object(customer));
					if (!group.orders().isJson()) {
						group.orders().out().println(customer.name());
					}
				}
			}
			if (group.orders().isJson()) {
				JsonObject root = new JsonObject();
				root.add(alike ? "pairs" : "customers", rows);
				group.print(root);
			}
			return Status.DONE;
		});
	}

	private static String word(LikeCustomers pair) {
		return pair.reason().name().toLowerCase(Locale.ROOT);
	}

	private static JsonObject object(LikeCustomers pair) {
		JsonObject object = new JsonObject();
		object.addProperty("one", pair.one().name());
		object.addProperty("other", pair.other().name());
		object.addProperty("likeness", pair.likeness());
		object.addProperty("by", word(pair));
		return object;
	}
}
