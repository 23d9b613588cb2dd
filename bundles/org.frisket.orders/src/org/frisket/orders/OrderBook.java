package org.frisket.orders;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.orders.internal.CustomerRows;
import org.frisket.orders.internal.Documents;
import org.frisket.orders.internal.JobRows;
import org.frisket.orders.internal.StageRows;
import org.frisket.orders.internal.Words;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Area;
import org.frisket.studio.store.Store;

/**
 * Every job of a studio. What a method changes is one transaction: when it returns, it is kept, also if the machine stops
 * the moment after. Every call opens the studio's database and may wait for other desks for some seconds, so it is none
 * for the screen's thread. Messages of {@link IOException}s are for people.
 * <p>
 * The stage of a job and its history are the order book's own: a change of stage and a save of the document are never in
 * each other's way. A document that is taken out is told of them; what it says of them when it comes back has no meaning.
 */
public final class OrderBook {

	/** To be named when the database is opened. */
	public static final Area AREA = new Area("orders", OrderBook.class, "migrations");

	private final StudioFolder studio;
	private final Clock clock;

	public OrderBook(StudioFolder studio) {
		this(studio, Clock.systemUTC());
	}

	/** @param clock tells the time of changes */
	public OrderBook(StudioFolder studio, Clock clock) {
		this.studio = studio;
		this.clock = clock;
	}

	private interface Task<T> {
		T with(Connection connection) throws SQLException, IOException, OrderException;
	}

	/** Carries what else went wrong out of a transaction, which is taken back. */
	private static final class Stopped extends Exception {
		private static final long serialVersionUID = 1L;

		Stopped(Exception cause) {
			super(cause);
		}
	}

	private <T> T read(Task<T> task) throws IOException, OrderException {
		try (Store store = Store.openForReading(studio, AREA)) {
			return store.<T, Stopped>read(connection -> stopped(task, connection));
		} catch (Stopped e) {
			throw cause(e);
		}
	}

	private <T> T change(Task<T> task) throws IOException, OrderException {
		try (Store store = Store.open(studio, AREA)) {
			return store.<T, Stopped>change(connection -> stopped(task, connection));
		} catch (Stopped e) {
			throw cause(e);
		}
	}

	private static <T> T stopped(Task<T> task, Connection connection) throws SQLException, Stopped {
		try {
			return task.with(connection);
		} catch (IOException | OrderException e) {
			throw new Stopped(e);
		}
	}

	private static OrderException cause(Stopped e) throws IOException {
		if (e.getCause() instanceof IOException io) {
			throw io;
		}
		return (OrderException) e.getCause();
	}

	/** Jobs, the latest number first. @param most how many at most */
	public List<Entry> list(long most) throws IOException, OrderException {
		return read(connection -> JobRows.list(connection, most));
	}

	/** What was changed at that time or later; a desk whose clock is slow may have changed something that is not in it. */
	public List<Entry> changedSince(Instant since) throws IOException, OrderException {
		return read(connection -> JobRows.changedSince(connection, since));
	}

	/** @throws OrderException if there is no such job */
	public Entry find(long number) throws IOException, OrderException {
		return read(connection -> entry(connection, number));
	}

	private static Entry entry(Connection connection, long number) throws SQLException, OrderException {
		return JobRows.find(connection, number)
				.orElseThrow(() -> new OrderException(NLS.bind(Messages.OrderBook_noJob, number)));
	}

	/** A new job, empty but for what was asked for. */
	public Entry add(NewOrder order, String person) throws IOException, OrderException {
		Job job = Jobs.create(UUID.randomUUID().toString(), order.title());
		job.setCustomer(order.customer().isEmpty() ? null : order.customer());
		job.setDue(order.due().orElse(null));
		job.setQuantity(order.quantity());
		job.setNotes(order.notes().isBlank() ? null : order.notes());
		return takeIn(job, person);
	}

	/**
	 * A job that comes from elsewhere, with a number of this order book. Its stage and history come with it.
	 *
	 * @throws OrderException if it is in the order book already
	 */
	public Entry takeIn(Job job, String person) throws IOException, OrderException {
		return change(connection -> {
			Optional<Entry> there = JobRows.find(connection, job.getId());
			if (there.isPresent()) {
				throw new OrderException(NLS.bind(Messages.OrderBook_alreadyThere, there.get().number()));
			}
			Instant now = now();
			long number = JobRows.nextNumber(connection);
			job.setNumber(Long.toString(number));
			Entry entry = said(job, number, 1, job.getStage(), now, now, person);
			JobRows.insert(connection, entry, CustomerRows.named(connection, entry.customer(), now));
			Documents.put(connection, job.getId(), JobFile.toBytes(job));
			for (StageChange change : job.getHistory()) {
				StageRows.add(connection, job.getId(), change.getAt() == null ? now : change.getAt(), text(change.getWho()),
						change.getFrom(), change.getTo(), text(change.getRemark()));
			}
			return entry;
		});
	}

	private static Entry said(Job job, long number, long revision, Stage stage, Instant since, Instant now, String person) {
		String customer = text(job.getCustomer()).strip();
		return new Entry(job.getId(), number, revision, text(job.getTitle()), customer, stage, since,
				Optional.ofNullable(job.getDue()), job.getQuantity(), Words.stock(job), Words.of(job, customer), now, person);
	}

	private static String text(String text) {
		return text == null ? "" : text;
	}

	/** Takes a job's document out, to be looked at or worked on. @throws OrderException if there is no such job */
	public StoredJob open(long number) throws IOException, OrderException {
		return read(connection -> {
			Entry entry = entry(connection, number);
			byte[] file;
			try {
				file = Documents.get(connection, entry.id()).orElseThrow(() -> new IOException("nothing"));
			} catch (IOException damaged) {
				throw damaged(number, damaged);
			}
			Job job;
			try {
				job = JobFile.load(file, Long.toString(number));
			} catch (IOException damaged) {
				throw damaged(number, damaged);
			}
			job.setNumber(Long.toString(number));
			job.setStage(entry.stage());
			job.getHistory().clear();
			job.getHistory().addAll(StageRows.list(connection, entry.id()));
			return new StoredJob(job, entry);
		});
	}

	private static OrderException damaged(long number, Exception e) {
		return new OrderException(NLS.bind(Messages.OrderBook_damaged, number, e.getMessage()), e);
	}

	/**
	 * Keeps a document.
	 *
	 * @param revision that was taken out
	 * @throws JobChangedException if somebody else has kept another one since; nothing is kept then
	 */
	public Entry save(Job job, long revision, String person) throws IOException, OrderException {
		return change(connection -> {
			Entry before = JobRows.find(connection, job.getId())
					.orElseThrow(() -> new OrderException(NLS.bind(Messages.OrderBook_noJob, job.getNumber())));
			Instant now = now();
			Entry entry = said(job, before.number(), revision + 1, before.stage(), before.since(), now, person);
			if (!JobRows.update(connection, entry, CustomerRows.named(connection, entry.customer(), now), revision)) {
				throw new JobChangedException(before);
			}
			Documents.put(connection, job.getId(), JobFile.toBytes(job));
			return entry;
		});
	}

	/**
	 * Brings a job to another stage.
	 *
	 * @param remark why, or empty
	 * @throws OrderException if it is there already
	 */
	public Entry stage(long number, Stage to, String person, String remark) throws IOException, OrderException {
		return change(connection -> {
			Entry before = entry(connection, number);
			if (before.stage() == to) {
				throw new OrderException(NLS.bind(Messages.OrderBook_sameStage, number, to.getLiteral()));
			}
			return staged(connection, before, to, person, remark);
		});
	}

	private Entry staged(Connection connection, Entry before, Stage to, String person, String remark)
			throws SQLException, OrderException {
		Instant now = now();
		StageRows.add(connection, before.id(), now, person, before.stage(), to, remark);
		JobRows.stage(connection, before.id(), to, now, person);
		return entry(connection, before.number());
	}

	/** Goes back to the stage before the last change; the history tells of both. */
	public Entry undoStage(long number, String person) throws IOException, OrderException {
		return change(connection -> {
			Entry before = entry(connection, number);
			List<StageChange> history = StageRows.list(connection, before.id());
			if (history.isEmpty()) {
				throw new OrderException(NLS.bind(Messages.OrderBook_nothingToUndo, number));
			}
			return staged(connection, before, history.get(history.size() - 1).getFrom(), person, "");
		});
	}

	/** What became of a job, the oldest first. */
	public List<StageChange> history(long number) throws IOException, OrderException {
		return read(connection -> StageRows.list(connection, entry(connection, number).id()));
	}

	/** As PostgreSQL keeps it. */
	private Instant now() {
		return clock.instant().truncatedTo(ChronoUnit.MICROS);
	}
}
