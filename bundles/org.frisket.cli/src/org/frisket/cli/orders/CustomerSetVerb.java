package org.frisket.cli.orders;

import java.util.concurrent.Callable;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerField;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** What is known of one of them. */
@Command(name = "set", description = "Keeps what is known of a customer; what is not said stays.", sortOptions = false)
final class CustomerSetVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersCustomerVerb group;

	@Parameters(paramLabel = "NAME", description = "Of the customer.")
	private String name;

	@Option(names = "--new", description = "It is one that there is not yet.")
	private boolean fresh;

	@Option(names = "--name", paramLabel = "NAME", description = "What it is called from now on, in its jobs too.")
	private String rename;

	@Option(names = "--contact", paramLabel = "NAME", description = "Whom to ask for.")
	private String contact;

	@Option(names = "--mail", paramLabel = "ADDRESS", description = "Where mail is sent.")
	private String mail;

	@Option(names = "--phone", paramLabel = "NUMBER", description = "Where it is called.")
	private String phone;

	@Option(names = "--address", paramLabel = "TEXT", description = "Where parcels go.")
	private String address;

	@Option(names = "--agreement", paramLabel = "TEXT", description = "What was agreed on prices.")
	private String agreement;

	@Option(names = "--notes", paramLabel = "TEXT", description = "Free remarks.")
	private String notes;

	@Override
	public Integer call() throws Refusal {
		return group.customers(customers -> {
			Customer customer = fresh ? Customer.named(name) : customers.find(name);
			customer = with(customer, CustomerField.NAME, rename);
			customer = with(customer, CustomerField.CONTACT, contact);
			customer = with(customer, CustomerField.MAIL, mail);
			customer = with(customer, CustomerField.PHONE, phone);
			customer = with(customer, CustomerField.ADDRESS, address);
			customer = with(customer, CustomerField.AGREEMENT, agreement);
			customer = with(customer, CustomerField.NOTES, notes);
			group.print(fresh ? customers.add(customer) : customers.change(customer, group.orders().person()));
			return Status.DONE;
		});
	}

	private static Customer with(Customer customer, CustomerField field, String text) {
		return text == null ? customer : customer.with(field, Conversions.lines(text));
	}
}
