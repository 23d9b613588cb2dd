package org.frisket.orders;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.orders.internal.JobRows;
import org.frisket.orders.internal.KeptJobs;
import org.frisket.orders.internal.Origin;
import org.frisket.orders.internal.PaperRows;
import org.frisket.orders.internal.ReferenceRows;
import org.frisket.orders.internal.StageRows;
import org.frisket.orders.internal.Transactions;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Area;

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

	private final Transactions transactions;

	public OrderBook(StudioFolder studio) {
		this(studio, Clock.systemUTC());
	}

	/** @param clock tells the time of changes */
	public OrderBook(StudioFolder studio, Clock clock) {
		transactions = new Transactions(studio, clock);
	}

	/** Jobs that can be read, the latest number first. @param most how many at most */
	public List<Entry> list(long most) throws IOException, OrderException {
		return transactions.read(connection -> JobRows.list(connection, most));
	}

	/**
	 * The numbers of those that no list has, since their rows are damaged or come from a newer Frisket; the latest first.
	 * Whoever asks for one of them is told why.
	 */
	public List<Long> unreadable() throws IOException, OrderException {
		return transactions.read(JobRows::unreadable);
	}

	/** What was changed at that time or later; a desk whose clock is slow may have changed something that is not in it. */
	public List<Entry> changedSince(Instant since) throws IOException, OrderException {
		return transactions.read(connection -> JobRows.changedSince(connection, since));
	}

	/** @throws OrderException if there is no such job */
	public Entry find(long number) throws IOException, OrderException {
		return transactions.read(connection -> KeptJobs.find(connection, number));
	}

	/** A new job, empty but for what was asked for. */
	public Entry add(NewOrder order, String person) throws IOException, OrderException {
		return takeIn(order.toJob(), person);
	}

	/**
	 * A job that comes from elsewhere, with a number of this order book. Its stage and history come with it. If its id says
	 * nothing, or is that of another job here, it gets one of its own.
	 *
	 * @throws OrderException if it is in the order book already: a job whose id was drawn by lot or that bears its number
	 *                        here; else one that has come before and was the same in all but number, stage and history
	 */
	public Entry takeIn(Job job, String person) throws IOException, OrderException {
		return takeIn(List.of(job), false, person).get(0);
	}

	/**
	 * Jobs that come from elsewhere, all or none.
	 *
	 * @param again whether they are jobs of their own even if they are in the order book
	 */
	public List<Entry> takeIn(List<Job> jobs, boolean again, String person) throws IOException, OrderException {
		List<Origin> origins = new ArrayList<>();
		for (Job job : jobs) {
			origins.add(Origin.of(job));
		}
		return transactions.change(connection -> {
			List<Entry> taken = new ArrayList<>();
			for (int i = 0; i < jobs.size(); i++) {
				taken.add(KeptJobs.takeIn(connection, jobs.get(i), origins.get(i), again, transactions.now(), person));
			}
			return taken;
		});
	}

	/** Takes a job's document out, to be looked at or worked on. @throws OrderException if there is no such job */
	public StoredJob open(long number) throws IOException, OrderException {
		return transactions.read(connection -> {
			Entry entry = KeptJobs.find(connection, number);
			return new StoredJob(KeptJobs.load(connection, entry), entry);
		});
	}

	/**
	 * The documents of several jobs, as they are at one moment. A job that is not there is missing.
	 *
	 * @param ids of jobs
	 * @return by id
	 * @throws OrderException if one of them cannot be read
	 */
	public Map<String, StoredJob> open(Collection<String> ids) throws IOException, OrderException {
		return transactions.read(connection -> {
			Map<String, StoredJob> jobs = new LinkedHashMap<>();
			for (String id : ids) {
				Optional<Entry> entry = JobRows.find(connection, id);
				if (entry.isPresent()) {
					jobs.put(id, new StoredJob(KeptJobs.load(connection, entry.get()), entry.get()));
				}
			}
			return jobs;
		});
	}

	/**
	 * Keeps a document.
	 *
	 * @param revision that was taken out
	 * @throws JobChangedException if somebody else has kept another one since; nothing is kept then
	 */
	public Entry save(Job job, long revision, String person) throws IOException, OrderException {
		return transactions.change(connection -> {
			Entry before = JobRows.find(connection, job.getId()).orElseThrow(() -> KeptJobs.noJob(job.getNumber()));
			return KeptJobs.keep(connection, job, before, revision, transactions.now(), person)
					.orElseThrow(() -> new JobChangedException(before));
		});
	}

	/**
	 * Brings a job to another stage, whatever the studio's rules say.
	 *
	 * @param remark why, or empty
	 * @throws OrderException if it is there already
	 */
	public Entry stage(long number, Stage to, String person, String remark) throws IOException, OrderException {
		return transactions.change(connection -> staged(connection, different(connection, number, to), to, person, remark));
	}

	/**
	 * Brings a job to another stage if there is nothing against it.
	 *
	 * @param remark why, or empty
	 * @param gate   is asked while the database is not held, and may take its time
	 * @throws OrderException      if it is there already, or the gate refuses
	 * @throws JobChangedException if somebody has changed the job while the gate was asked
	 */
	public Entry stage(long number, Stage to, String person, String remark, StageGate gate)
			throws IOException, OrderException {
		StageStep step = transactions.read(connection -> {
			Entry before = different(connection, number, to);
			return new StageStep(before, StageRows.stood(connection, before), to, remark,
					PaperRows.has(connection, before.id(), PaperKind.PROOF));
		});
		gate.pass(step);
		return transactions.change(connection -> {
			Entry now = KeptJobs.find(connection, number);
			if (now.revision() != step.entry().revision() || now.stage() != step.entry().stage()) {
				throw new JobChangedException(now);
			}
			return staged(connection, now, to, person, remark);
		});
	}

	private static Entry different(Connection connection, long number, Stage to) throws SQLException, OrderException {
		Entry before = KeptJobs.find(connection, number);
		if (before.stage() == to) {
			throw new OrderException(NLS.bind(Messages.OrderBook_sameStage, number, to.getLiteral()));
		}
		return before;
	}

	private Entry staged(Connection connection, Entry before, Stage to, String person, String remark) throws SQLException {
		return StageRows.change(connection, before, to, transactions.now(), person, remark);
	}

	/** Goes back to the stage before the last change; the history tells of both. */
	public Entry undoStage(long number, String person) throws IOException, OrderException {
		return transactions.change(connection -> undone(connection, KeptJobs.find(connection, number), person));
	}

	/**
	 * The same, but only if it is still the change that is meant.
	 *
	 * @param since when the job came to its stage by that change
	 * @throws JobChangedException if its stage was changed since
	 */
	public Entry undoStage(long number, Instant since, String person) throws IOException, OrderException {
		return transactions.change(connection -> {
			Entry before = KeptJobs.find(connection, number);
			if (!before.since().equals(since)) {
				throw new JobChangedException(before);
			}
			return undone(connection, before, person);
		});
	}

	private Entry undone(Connection connection, Entry before, String person) throws SQLException, OrderException {
		List<StageChange> history = StageRows.list(connection, before.id());
		if (history.isEmpty()) {
			throw new OrderException(NLS.bind(Messages.OrderBook_nothingToUndo, before.number()));
		}
		return staged(connection, before, history.get(history.size() - 1).getFrom(), person, "");
	}

	/** What became of a job, the oldest first. */
	public List<StageChange> history(long number) throws IOException, OrderException {
		return transactions.read(connection -> StageRows.list(connection, KeptJobs.find(connection, number).id()));
	}

	/** Remembers that something was handed out of a job. @param remark to whom, or what of it; may be empty */
	public Paper handedOut(long number, PaperKind kind, String person, String remark) throws IOException, OrderException {
		return transactions.change(connection -> {
			Paper paper = new Paper(kind, transactions.now(), person, remark);
			PaperRows.add(connection, KeptJobs.find(connection, number).id(), paper);
			return paper;
		});
	}

	/** What was handed out of a job, the oldest first. */
	public List<Paper> papers(long number) throws IOException, OrderException {
		return transactions.read(connection -> PaperRows.list(connection, KeptJobs.find(connection, number).id()));
	}

	/** What a job is called where it came from; empty if nothing was said. */
	public Optional<String> reference(long number) throws IOException, OrderException {
		return transactions.read(connection -> ReferenceRows.ofJob(connection, KeptJobs.find(connection, number).id()));
	}
}
