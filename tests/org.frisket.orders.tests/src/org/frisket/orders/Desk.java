package org.frisket.orders;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.frisket.model.Stage;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerChangedException;
import org.frisket.orders.customers.CustomerField;
import org.frisket.orders.customers.Customers;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;

/**
 * A program of its own that does what a busy desk does, and tells of each edit what came of it: a line with the edit's
 * name, which is nobody else's, what was done and to what, and who is named if it was refused.
 */
final class Desk {

	/** What it says of an edit that was not kept since the server was away, or others were at it, for too long. */
	static final String LOST = "lost";
	/** What it must never say: it was not told whether an edit was kept. */
	static final String UNSURE = "unsure";

	private static final String CUSTOMER = "Brindle Sound Ferries";

	private final OrderBook book;
	private final Customers customers;
	private final Random random;
	private final List<Long> jobs;
	private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);

	private Desk(StudioFolder studio, long seed, List<Long> jobs) {
		book = new OrderBook(studio);
		customers = new Customers(studio);
		random = new Random(seed);
		this.jobs = jobs;
	}

	/** @param arguments folder, address or "", the desk's name, a seed, how many edits, and the numbers of the jobs */
	public static void main(String[] arguments) throws Exception {
		Databases.choose(Optional.of(arguments[1]));
		List<Long> jobs = List.of(arguments).subList(5, arguments.length).stream().map(Long::valueOf).toList();
		Desk desk = new Desk(new StudioFolder(Path.of(arguments[0])), Long.parseLong(arguments[3]), jobs);
		for (int edit = 0; edit < Integer.parseInt(arguments[4]); edit++) {
			desk.edit(arguments[2] + "/" + edit);
		}
	}

	private void edit(String name) throws Exception {
		try {
			out.println(name + " " + done(name, jobs.get(random.nextInt(jobs.size()))));
		} catch (JobChangedException e) {
			out.println(name + " changed " + e.now().number() + " " + e.now().changedBy() + " " + e.getMessage());
		} catch (CustomerChangedException e) {
			out.println(name + " customerChanged " + e.now().notes());
		} catch (OrderException e) {
			out.println(name + " refused " + e.getMessage());
		} catch (IOException e) {
			// in the words of messages.properties of the store
			boolean lost = e.getMessage().contains("there is no connection") || e.getMessage().contains("is using it");
			out.println(name + " " + (lost ? LOST : e.getMessage().contains("not known") ? UNSURE : "failed") + " "
					+ e.getMessage());
		}
	}

	private String done(String name, long job) throws Exception {
		return switch (random.nextInt(12)) {
		case 0 -> "add " + book.add(new NewOrder(name, CUSTOMER, Optional.empty(), 1, ""), name).number();
		case 1, 2, 3, 4 -> save(name, job);
		case 5, 6, 7 -> stage(name, job);
		case 8 -> {
			book.undoStage(job, name);
			yield "stage " + job;
		}
		case 9 -> {
			book.handedOut(job, PaperKind.DOCKET, name, name);
			yield "paper " + job;
		}
		case 10 -> customer(name);
		default -> {
			customers.add(Customer.named(name));
			yield "customer";
		}
		};
	}

	private String save(String name, long number) throws Exception {
		StoredJob open = book.open(number);
		String notes = open.job().getNotes();
		open.job().setNotes(notes == null ? name : notes + " " + name);
		return "save " + number + " " + book.save(open.job(), open.entry().revision(), name).revision();
	}

	private String stage(String name, long number) throws Exception {
		Stage now = book.find(number).stage();
		Stage to = Stage.VALUES.get((now.getValue() + 1 + random.nextInt(3)) % Stage.VALUES.size());
		if (random.nextBoolean()) {
			book.stage(number, to, name, name);
		} else {
			book.stage(number, to, name, name, step -> { });
		}
		return "stage " + number;
	}

	private String customer(String name) throws Exception {
		Customer known = customers.find(CUSTOMER);
		customers.change(known.with(CustomerField.NOTES, name), name);
		return "note " + (known.revision() + 1);
	}
}
