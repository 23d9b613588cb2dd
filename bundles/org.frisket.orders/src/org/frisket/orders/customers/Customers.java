package org.frisket.orders.customers;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.orders.Entry;
import org.frisket.orders.JobChangedException;
import org.frisket.orders.OrderException;
import org.frisket.orders.internal.CustomerRows;
import org.frisket.orders.internal.JobRows;
import org.frisket.orders.internal.KeptJobs;
import org.frisket.orders.internal.Transactions;
import org.frisket.studio.NameKey;
import org.frisket.studio.StudioFolder;

/**
 * Whom the studio works for. What a method changes is one transaction. Names are in the documents of jobs as well: where a
 * name is changed, so are they, and whoever has one of them open is told when it is to be saved. Every call opens the
 * studio's database, so it is none for the screen's thread. Messages of exceptions are for people.
 */
public final class Customers {

	private final Transactions transactions;

	public Customers(StudioFolder studio) {
		this(studio, Clock.systemUTC());
	}

	/** @param clock tells the time of changes */
	public Customers(StudioFolder studio, Clock clock) {
		transactions = new Transactions(studio, clock);
	}

	/** All, by name. */
	public List<Customer> list() throws IOException, OrderException {
		return transactions.read(CustomerRows::list);
	}

	/** By a name that people would take for the same. @throws OrderException if there is none of that name */
	public Customer find(String name) throws IOException, OrderException {
		return transactions.read(connection -> named(connection, name));
	}

	static Customer named(Connection connection, String name) throws SQLException, OrderException {
		return CustomerRows.find(connection, NameKey.of(name))
				.orElseThrow(() -> new OrderException(NLS.bind(Messages.Customers_none, name.strip())));
	}

	/** Customers that may be one. */
	public List<LikeCustomers> alike() throws IOException, OrderException {
		return LikeCustomers.among(list());
	}

	/** The jobs of a customer, the latest number first. */
	public List<Entry> jobs(Customer customer) throws IOException, OrderException {
		return transactions.read(connection -> JobRows.ofCustomer(connection, customer.id()));
	}

	/** @throws OrderException if there is one of that name */
	public Customer add(Customer customer) throws IOException, OrderException {
		return transactions.change(connection -> {
			free(connection, customer.name(), "");
			return CustomerRows.insert(connection, UUID.randomUUID().toString(), customer, transactions.now());
		});
	}

	private static void free(Connection connection, String name, String id) throws SQLException, OrderException {
		Customer taken = CustomerRows.find(connection, NameKey.of(name)).orElse(null);
		if (taken != null && !taken.id().equals(id)) {
			throw new OrderException(NLS.bind(Messages.Customers_taken, taken.name()));
		}
	}

	/**
	 * Keeps what is known of a customer, with all jobs under its new name if it has one.
	 *
	 * @param customer with the revision that it was looked up with
	 * @throws CustomerChangedException if somebody else has changed it since
	 * @throws OrderException           if another one has that name
	 */
	public Customer change(Customer customer, String person) throws IOException, OrderException {
		return transactions.change(connection -> {
			Customer before = current(connection, customer);
			free(connection, customer.name(), customer.id());
			Customer after = CustomerRows.update(connection, customer, transactions.now());
			if (!before.name().equals(after.name())) {
				rewrite(connection, after, entry -> true, job -> job.setCustomer(after.name()), person);
			}
			return after;
		});
	}

	private static Customer current(Connection connection, Customer customer) throws SQLException, OrderException {
		Customer now = CustomerRows.byId(connection, customer.id())
				.orElseThrow(() -> new OrderException(NLS.bind(Messages.Customers_none, customer.name())));
		if (now.revision() != customer.revision()) {
			throw new CustomerChangedException(now);
		}
		return now;
	}

	/**
	 * Makes one of two: all jobs go to the one that stays. What is not known of it is taken from the other; notes are
	 * joined.
	 *
	 * @throws CustomerChangedException if somebody else has changed one of them since
	 */
	public Customer merge(Customer from, Customer into, String person) throws IOException, OrderException {
		return unite(from, into, person).after();
	}

	/** The same, with what is needed to {@link #part} them. */
	public Merger unite(Customer from, Customer into, String person) throws IOException, OrderException {
		if (from.id().equals(into.id())) {
			throw new OrderException(NLS.bind(Messages.Customers_itself, into.name()));
		}
		return transactions.change(connection -> {
			Customer gone = current(connection, from);
			Customer before = current(connection, into);
			Customer stays = CustomerRows.update(connection, joined(gone, before), transactions.now());
			List<Long> jobs = JobRows.ofCustomer(connection, gone.id()).stream().map(Entry::number).toList();
			rewrite(connection, gone, entry -> true, job -> job.setCustomer(stays.name()), person);
			CustomerRows.delete(connection, gone.id());
			return new Merger(gone, before, stays, jobs);
		});
	}

	/** What two customers come to if one is made of them; nothing is changed. */
	public static Customer preview(Customer from, Customer into) {
		return joined(from, into);
	}

	/**
	 * Makes two again of customers that were made one: each is as it was, and jobs that went over and are still there go
	 * back.
	 *
	 * @return both, that which had gone first
	 * @throws CustomerChangedException if somebody else has changed it since
	 * @throws OrderException           if there is another one by now that is called as the one that had gone
	 */
	public List<Customer> part(Merger merger, String person) throws IOException, OrderException {
		return transactions.change(connection -> {
			current(connection, merger.after());
			free(connection, merger.gone().name(), "");
			Customer stays = CustomerRows.update(connection, merger.before(), transactions.now());
			Customer back = CustomerRows.insert(connection, merger.gone().id(), merger.gone(), transactions.now());
			rewrite(connection, stays, entry -> merger.jobs().contains(entry.number()), job -> job.setCustomer(back.name()),
					person);
			return List.of(back, stays);
		});
	}

	/**
	 * Takes a customer away that has no jobs.
	 *
	 * @throws CustomerChangedException if somebody else has changed it since
	 * @throws OrderException           if it has jobs
	 */
	public void remove(Customer customer) throws IOException, OrderException {
		transactions.change(connection -> {
			Customer now = current(connection, customer);
			int jobs = JobRows.ofCustomer(connection, now.id()).size();
			if (jobs > 0) {
				throw new OrderException(NLS.bind(Messages.Customers_hasJobs, now.name(), jobs));
			}
			CustomerRows.delete(connection, now.id());
			return null;
		});
	}

	private static Customer joined(Customer from, Customer into) {
		Customer joined = into;
		for (CustomerField field : CustomerField.values()) {
			if (into.get(field).isBlank()) {
				joined = joined.with(field, from.get(field));
			} else if (field == CustomerField.NOTES && !from.notes().isBlank() && !into.notes().contains(from.notes())) {
				joined = joined.with(field, into.notes() + "\n" + from.notes());
			}
		}
		return joined;
	}

	private void rewrite(Connection connection, Customer of, Predicate<Entry> which, Consumer<Job> edit, String person)
			throws SQLException, IOException, OrderException {
		for (Entry entry : JobRows.ofCustomer(connection, of.id()).stream().filter(which).toList()) {
			Job job = KeptJobs.load(connection, entry);
			edit.accept(job);
			KeptJobs.keep(connection, job, entry, entry.revision(), transactions.now(), person)
					.orElseThrow(() -> new JobChangedException(entry));
		}
	}

	/** All that is kept of a customer, as JSON. */
	public String export(Customer customer) throws IOException, OrderException {
		return transactions.read(connection -> PersonalData.json(connection, current(connection, customer)));
	}

	/**
	 * Forgets who a customer was: all that is known of it is blank, its name is a number, and so it is in the documents of
	 * its jobs, in what they are searched by, in their titles and notes, in remarks, and where other jobs name them. The
	 * persons of the history are the studio's own, and stay. What is set in type stays as it was made. A document that
	 * cannot be read keeps it from being done, for it may hold the name.
	 *
	 * @throws CustomerChangedException if somebody else has changed it since
	 */
	public Erasure erase(Customer customer, String person) throws IOException, OrderException {
		return transactions.change(connection -> {
			Customer before = current(connection, customer);
			Customer after = CustomerRows.update(connection, Eraser.blank(connection, before), transactions.now());
			Eraser eraser = new Eraser(before, after.name());
			rewrite(connection, after, entry -> true, eraser::erase, person);
			for (Entry entry : JobRows.ofCustomer(connection, after.id())) {
				eraser.remarks(connection, entry);
			}
			renameGuests(connection, after, person);
			return new Erasure(after, eraser.jobs(), eraser.stillNamed());
		});
	}

	/** Jobs that share sheets with those of a customer call them by their titles. */
	private void renameGuests(Connection connection, Customer of, String person)
			throws SQLException, IOException, OrderException {
		Map<String, String> titles = new HashMap<>();
		JobRows.ofCustomer(connection, of.id()).forEach(entry -> titles.put(entry.id(), entry.title()));
		if (titles.isEmpty()) {
			return;
		}
		for (Entry entry : JobRows.list(connection, Long.MAX_VALUE)) {
			Job job = KeptJobs.load(connection, entry);
			boolean changed = false;
			for (Guest guest : job.getGuests()) {
				String title = titles.get(guest.getJob());
				if (title != null && !title.equals(guest.getTitle())) {
					guest.setTitle(title);
					changed = true;
				}
			}
			if (changed) {
				KeptJobs.keep(connection, job, entry, entry.revision(), transactions.now(), person)
						.orElseThrow(() -> new JobChangedException(entry));
			}
		}
	}
}
