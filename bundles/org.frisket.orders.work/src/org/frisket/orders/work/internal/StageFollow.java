package org.frisket.orders.work.internal;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;
import org.frisket.orders.StageStep;
import org.frisket.orders.internal.JobRows;
import org.frisket.orders.internal.KeptJobs;
import org.frisket.orders.internal.StageRows;
import org.frisket.orders.work.Need;
import org.frisket.orders.work.RunResult;
import org.frisket.orders.work.Step;

/**
 * Has stages follow from pieces: a job whose pieces are all there goes on, one that lacks some again goes back to where it
 * came from, unless somebody has moved it since. A job on hold stays where it is.
 */
public final class StageFollow {

	private final Connection connection;
	private final Instant now;
	private final String person;

	public StageFollow(Connection connection, Instant now, String person) {
		this.connection = connection;
		this.now = now;
		this.person = person;
	}

	/**
	 * @param run    because of which
	 * @param place  of what was said of it
	 * @param remark for the history
	 * @return empty if the job stays
	 */
	public Optional<RunResult.Move> follow(String job, Step step, long run, int place, String remark)
			throws SQLException, IOException, OrderException {
		Optional<Entry> found = JobRows.find(connection, job);
		if (found.isEmpty() || StageStep.isAside(found.get().stage())) {
			return Optional.empty();
		}
		Entry entry = found.get();
		Stage there = step.stage();
		boolean whole = isWhole(entry, step);
		if (whole && entry.stage().compareTo(there) < 0) {
			MarkRows.addMove(connection, run, place, job, new MarkRows.Move(entry.stage(), there, now));
			return Optional.of(move(entry, there, remark));
		}
		if (!whole && entry.stage() == there) {
			Optional<MarkRows.Move> came = MarkRows.move(connection, job, there, entry.since());
			return came.isPresent() ? Optional.of(move(entry, came.get().from(), remark)) : Optional.empty();
		}
		return Optional.empty();
	}

	private boolean isWhole(Entry entry, Step step) throws SQLException, OrderException {
		List<Need> needs = Need.of(KeptJobs.load(connection, entry)).stream().filter(need -> need.has(step)).toList();
		Tally tally = Tally.ofJob(connection, entry.id());
		return !needs.isEmpty()
				&& needs.stream().allMatch(need -> tally.made(entry.id(), need.of(), step) >= entry.quantity());
	}

	/** Brings a job to a stage, whatever it has. */
	public RunResult.Move move(Entry entry, Stage to, String remark) throws SQLException {
		StageRows.add(connection, entry.id(), now, person, entry.stage(), to, remark);
		JobRows.stage(connection, entry.id(), to, now, person);
		return new RunResult.Move(entry.number(), entry.stage(), to);
	}
}
