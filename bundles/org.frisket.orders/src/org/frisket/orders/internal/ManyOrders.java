package org.frisket.orders.internal;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

import org.frisket.geometry.Monitor;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.orders.Entry;
import org.frisket.orders.NewOrder;
import org.frisket.studio.NameKey;

/**
 * Many orders that become jobs in one transaction. Nothing is asked for each of them, and rows go to the database by the
 * hundred: a file that is only ever added to grows with every page that is touched again.
 */
public final class ManyOrders {

	/** So many are made before anybody is asked whether to go on. */
	private static final int PORTION = 500;

	/** @param reference what it is called where it comes from, known of no job; empty if nothing is said */
	public record Wanted(NewOrder order, String reference) {
	}

	private final Instant now;
	private final String person;
	private final Map<String, String> customers;
	private final List<Entry> taken = new ArrayList<>();

	private ManyOrders(Instant now, String person, Map<String, String> customers) {
		this.now = now;
		this.person = person;
		this.customers = customers;
	}

	/**
	 * @return the jobs in the order of the orders, with numbers that follow each other
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static List<Entry> takeIn(Connection connection, List<Wanted> orders, Instant now, String person, Monitor monitor)
			throws SQLException, IOException {
		if (orders.isEmpty()) {
			return List.of();
		}
		ManyOrders many = new ManyOrders(now, person,
				CustomerRows.named(connection, orders.stream().map(each -> each.order().customer()).toList(), now));
		// rows whose keys ascend touch each page of an index once
		List<String> ids = Stream.generate(() -> UUID.randomUUID().toString()).limit(orders.size()).sorted().toList();
		long first = JobRows.nextNumbers(connection, orders.size());
		for (int from = 0; from < orders.size(); from += PORTION) {
			monitor.check();
			int to = Math.min(orders.size(), from + PORTION);
			many.add(connection, orders.subList(from, to), ids.subList(from, to), first + from);
			monitor.worked((double) to / orders.size());
		}
		monitor.check();
		return many.taken;
	}

	private void add(Connection connection, List<Wanted> orders, List<String> ids, long first)
			throws SQLException, IOException {
		List<Object[]> jobs = new ArrayList<>();
		List<Object[]> documents = new ArrayList<>();
		List<Object[]> references = new ArrayList<>();
		for (int i = 0; i < orders.size(); i++) {
			Job job = orders.get(i).order().toJob();
			job.setId(ids.get(i));
			job.setNumber(Long.toString(first + i));
			Entry entry = KeptJobs.entry(job, first + i, 1, job.getStage(), now, now, person);
			taken.add(entry);
			jobs.add(JobRows.values(entry, Optional.ofNullable(customers.get(NameKey.of(entry.customer())))));
			documents.addAll(Documents.pieces(entry.id(), JobFile.toBytes(job)));
			if (!orders.get(i).reference().isEmpty()) {
				references.add(new Object[] { orders.get(i).reference(), entry.id() });
			}
		}
		JobRows.insertAll(connection, jobs);
		Documents.addAll(connection, documents);
		ReferenceRows.addAll(connection, references);
	}
}
