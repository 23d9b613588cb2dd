package org.frisket.orders.work.again;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.frisket.material.Stock;
import org.frisket.material.StockField;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Run;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.orders.Entry;
import org.frisket.orders.Fact;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.Repeats;
import org.frisket.orders.StoredJob;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Customers;
import org.frisket.studio.StudioFolder;

/**
 * What of the studio a job is made with: its stock, machines, tools, and what was agreed. It is to be remembered when the job
 * is cut, so that it can be said years later what has changed.
 */
public final class MadeWith {

	/** What of a stock is looked at; how much is on hand is another matter. */
	private static final List<StockField> STOCK = List.of(StockField.NAME, StockField.FAMILY, StockField.GRAMMAGE,
			StockField.CALIPER, StockField.COLOUR, StockField.FINISH, StockField.GRAIN, StockField.PRICE, StockField.CURRENCY);
	/** A blade wears with all jobs. */
	private static final String WORN = "worn";

	private MadeWith() {
	}

	/** Remembers it of a job as the studio is now, in the place of what was remembered of it. */
	public static void keep(StudioFolder studio, long number) throws IOException, OrderException {
		StoredJob job = new OrderBook(studio).open(number);
		new Repeats(studio).keepFacts(number, of(job.job(), SettingsDesk.look(studio), customer(studio, job.entry())));
	}

	/** The customer of a job, if it has one. */
	static Optional<Customer> customer(StudioFolder studio, Entry entry) throws IOException, OrderException {
		return entry.customer().isEmpty() ? Optional.empty() : Optional.of(new Customers(studio).find(entry.customer()));
	}

	static List<Fact> of(Job job, DeskState desk, Optional<Customer> customer) {
		List<Fact> facts = new ArrayList<>();
		customer.ifPresent(each -> {
			facts.add(new Fact(Fact.Subject.CUSTOMER, "", Fact.NAME, each.name()));
			facts.add(new Fact(Fact.Subject.CUSTOMER, "", Fact.AGREEMENT, each.agreement()));
		});
		stocks(job).forEach(id -> desk.stock(id).ifPresent(stock -> facts.addAll(of(stock))));
		machines(job, desk).forEach(id -> desk.machines().stream().filter(machine -> machine.id().equals(id)).findFirst()
				.ifPresent(machine -> facts.addAll(of(machine))));
		tools(job, desk).forEach(id -> desk.tools().stream().filter(tool -> tool.id().equals(id)).findFirst()
				.ifPresent(tool -> facts.addAll(of(tool))));
		return facts;
	}

	static List<Fact> of(Stock stock) {
		List<Fact> facts = new ArrayList<>();
		for (StockField field : STOCK) {
			// a weight in pounds and one in g/m² are one thing
			String text = field == StockField.GRAMMAGE
					? stock.grammage().map(number -> number.toPlainString()).orElse("")
					: field.text(stock);
			facts.add(new Fact(Fact.Subject.STOCK, stock.id(), field.word(), text));
		}
		return facts;
	}

	static List<Fact> of(Machine machine) {
		return facts(Fact.Subject.MACHINE, machine.id(), MachineOptions.texts(machine));
	}

	static List<Fact> of(Tool tool) {
		return facts(Fact.Subject.TOOL, tool.id(), ToolOptions.texts(tool));
	}

	private static List<Fact> facts(Fact.Subject subject, String id, Map<String, String> texts) {
		return texts.entrySet().stream().filter(text -> !text.getKey().equals(WORN))
				.map(text -> new Fact(subject, id, text.getKey(), text.getValue())).toList();
	}

	/** Ids of the stocks of its layers. */
	static Set<String> stocks(Job job) {
		Set<String> stocks = new LinkedHashSet<>();
		job.getLayers().stream().map(layer -> layer.getStock()).filter(stock -> stock != null && !stock.isBlank())
				.forEach(stocks::add);
		return stocks;
	}

	/** Ids of the machines it was run on. */
	static Set<String> machines(Job job, DeskState desk) {
		Set<String> machines = new LinkedHashSet<>();
		runs(job, desk).forEach(run -> machines.add(run.setup().machine()));
		return machines;
	}

	/** Ids of the tools it asks for, and of those it was run with. */
	static Set<String> tools(Job job, DeskState desk) {
		Set<String> tools = new LinkedHashSet<>();
		Jobs.elements(job).stream().flatMap(element -> element.getOperations().stream())
				.map(operation -> operation.getTool()).filter(tool -> tool != null && !tool.isBlank()).forEach(tools::add);
		runs(job, desk).forEach(run -> tools.add(run.setup().tool()));
		return tools;
	}

	/** Of the job or those it is a repeat of, the oldest first. */
	static List<Run> runs(Job job, DeskState desk) {
		return desk.runs().stream().filter(run -> run.job().equals(job.getId()) || job.getRepeats().contains(run.job()))
				.toList();
	}
}
