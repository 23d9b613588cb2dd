package org.frisket.orders;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.UUID;

import org.frisket.model.Job;
import org.frisket.orders.internal.FactRows;
import org.frisket.orders.internal.KeptJobs;
import org.frisket.orders.internal.RepeatRows;
import org.frisket.orders.internal.Transactions;
import org.frisket.studio.StudioFolder;

/**
 * Jobs that are made again, and what each was made with. What a method changes is one transaction. Every call opens the
 * studio's database, so it is none for the screen's thread. Messages of exceptions are for people.
 */
public final class Repeats {

	private final StudioFolder studio;
	private final Clock clock;
	private final Transactions transactions;

	public Repeats(StudioFolder studio) {
		this(studio, Clock.systemUTC());
	}

	/** @param clock tells the time of changes */
	public Repeats(StudioFolder studio, Clock clock) {
		this.studio = studio;
		this.clock = clock;
		transactions = new Transactions(studio, clock);
	}

	/**
	 * A copy of a job as an order of its own, with another number. It says of which it is a repeat, and of which that one is.
	 *
	 * @param copy with whatever is asked for otherwise; its id, number and history are made anew
	 * @throws OrderException if there is no job of that number
	 */
	public Entry add(Job copy, long original, String person) throws IOException, OrderException {
		StoredJob before = new OrderBook(studio, clock).open(original);
		copy.getRepeats().clear();
		copy.getRepeats().add(before.entry().id());
		copy.getRepeats().addAll(before.job().getRepeats());
		copy.setId(UUID.randomUUID().toString());
		copy.setNumber(null);
		copy.getHistory().clear();
		return new OrderBook(studio, clock).takeIn(List.of(copy), true, person).get(0);
	}

	/** The jobs that a job is a repeat of, the latest first; those of another order book are not known here. */
	public List<Entry> originals(long number) throws IOException, OrderException {
		return transactions.read(connection -> RepeatRows.originals(connection, KeptJobs.find(connection, number).id()));
	}

	/** The repeats of a job, the latest number first. */
	public List<Entry> repeats(long number) throws IOException, OrderException {
		return transactions.read(connection -> RepeatRows.repeats(connection, KeptJobs.find(connection, number).id()));
	}

	/** Remembers what a job was made with, in the place of what was remembered of it before. */
	public void keepFacts(long number, List<Fact> facts) throws IOException, OrderException {
		transactions.change(connection -> {
			FactRows.replace(connection, KeptJobs.find(connection, number).id(), facts);
			return null;
		});
	}

	/** What a job was made with; empty if nobody remembered it. */
	public List<Fact> facts(long number) throws IOException, OrderException {
		return transactions.read(connection -> FactRows.list(connection, KeptJobs.find(connection, number).id()));
	}
}
