package org.frisket.cli.orders;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.VerbGroup;
import org.frisket.orders.OrderException;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerField;
import org.frisket.orders.customers.Customers;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;

/** Whom the studio works for. */
@Command(name = "customer", description = "Keeps what is known of customers.", synopsisSubcommandLabel = "WHAT", //
		subcommands = { CustomerListVerb.class, CustomerShowVerb.class, CustomerSetVerb.class, CustomerMergeVerb.class,
				CustomerExportVerb.class, CustomerEraseVerb.class })
final class OrdersCustomerVerb extends VerbGroup {

	@ParentCommand
	private OrdersVerb orders;

	OrdersVerb orders() {
		return orders;
	}

	<T> T customers(CustomersTask<T> task) throws Refusal {
		return orders.desk(studio -> task.with(new Customers(studio)));
	}

	/** What is done with them. */
	interface CustomersTask<T> {
		T with(Customers customers) throws IOException, OrderException, Refusal;
	}

	static JsonObject object(Customer customer) {
		JsonObject object = new JsonObject();
		for (CustomerField field : CustomerField.values()) {
			object.addProperty(field.word(), customer.get(field));
		}
		object.addProperty("revision", customer.revision());
		return object;
	}

	void print(Customer customer) {
		if (orders.isJson()) {
			print(object(customer));
			return;
		}
		Map<String, String> known = new LinkedHashMap<>();
		for (CustomerField field : CustomerField.values()) {
			known.put(field.word(), customer.get(field));
		}
		known.forEach((word, text) -> {
			if (!text.isBlank()) {
				orders.out().println(word + ": " + text.replace("\n", "\n  "));
			}
		});
	}

	void print(JsonElement element) {
		orders.out().println(
				Json.text(element));
	}
}
