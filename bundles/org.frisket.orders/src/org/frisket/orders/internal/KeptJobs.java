package org.frisket.orders.internal;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;

/** Jobs as they are kept: their row and their document, which say the same. */
public final class KeptJobs {

	private KeptJobs() {
	}

	/** @throws OrderException if there is no such job */
	public static Entry find(Connection connection, long number) throws SQLException, OrderException {
		return JobRows.find(connection, number).orElseThrow(() -> noJob(number));
	}

	public static OrderException noJob(Object number) {
		return new OrderException(NLS.bind(Messages.KeptJobs_noJob, number));
	}

	/** The document of a job, with the stage and history that are the order book's. */
	public static Job load(Connection connection, Entry entry) throws SQLException, OrderException {
		Job job;
		try {
			job = JobFile.load(Documents.get(connection, entry.id()).orElseThrow(() -> new IOException("nothing")),
					Long.toString(entry.number()));
		} catch (IOException damaged) {
			throw new OrderException(NLS.bind(Messages.KeptJobs_damaged, entry.number(), damaged.getMessage()), damaged);
		}
		// the file may have been made by one who called it otherwise
		job.setId(entry.id());
		job.setNumber(Long.toString(entry.number()));
		job.setStage(entry.stage());
		job.getHistory().clear();
		job.getHistory().addAll(StageRows.list(connection, entry.id()));
		return job;
	}

	/**
	 * A job that comes from elsewhere. It gets a number and, if its own says nothing or is another job's, an id; its stage
	 * and history come with it.
	 *
	 * @param origin what it said of itself when it came
	 * @param again  whether it is a job of its own even if it is in the order book
	 * @throws OrderException if it is in the order book already
	 */
	public static Entry takeIn(Connection connection, Job job, Origin origin, boolean again, Instant now, String person)
			throws SQLException, IOException, OrderException {
		Optional<Entry> there = again ? Optional.empty() : origin.known(connection);
		if (there.isPresent()) {
			throw new OrderException(NLS.bind(Messages.KeptJobs_alreadyThere, there.get().number()));
		}
		job.setId(origin.freeId(connection));
		long number = JobRows.nextNumber(connection);
		job.setNumber(Long.toString(number));
		Entry entry = entry(job, number, 1, job.getStage(), now, now, person);
		JobRows.insert(connection, entry, CustomerRows.named(connection, entry.customer(), now));
		Documents.put(connection, job.getId(), JobFile.toBytes(job));
		origin.keep(connection, job.getId());
		RepeatRows.add(connection, job);
		for (StageChange change : job.getHistory()) {
			StageRows.add(connection, job.getId(), change.getAt() == null ? now : change.getAt(), text(change.getWho()),
					change.getFrom(), change.getTo(), text(change.getRemark()));
		}
		return entry;
	}

	/**
	 * Keeps a document in the place of the one before.
	 *
	 * @param before   the job as it is
	 * @param revision of the document that this one was made of
	 * @return empty if there is another one by now; nothing is kept then
	 */
	public static Optional<Entry> keep(Connection connection, Job job, Entry before, long revision, Instant now,
			String person) throws SQLException, IOException {
		Entry entry = entry(job, before.number(), revision + 1, before.stage(), before.since(), now, person);
		if (!JobRows.update(connection, entry, CustomerRows.named(connection, entry.customer(), now), revision)) {
			return Optional.empty();
		}
		Documents.put(connection, job.getId(), JobFile.toBytes(job));
		return Optional.of(entry);
	}

	static Entry entry(Job job, long number, long revision, Stage stage, Instant since, Instant now,
			String person) {
		String customer = text(job.getCustomer()).strip();
		return new Entry(job.getId(), number, revision, text(job.getTitle()), customer, stage, since,
				Optional.ofNullable(job.getDue()), job.getQuantity(), Words.stock(job), Words.of(job, customer), now, person);
	}

	private static String text(String text) {
		return text == null ? "" : text;
	}
}
