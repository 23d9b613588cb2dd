package org.frisket.orders.work;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.StockShelf;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.SettingsArea;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.internal.KeptJobs;
import org.frisket.orders.internal.Transactions;
import org.frisket.orders.work.internal.CheckedMark;
import org.frisket.orders.work.internal.MarkRows;
import org.frisket.orders.work.internal.ProvenSettings;
import org.frisket.orders.work.internal.RunRows;
import org.frisket.orders.work.internal.StageFollow;
import org.frisket.orders.work.internal.StockUse;
import org.frisket.sheets.leftovers.Leftovers;
import org.frisket.studio.StudioFolder;

/**
 * The runs of a studio: what was planned to be printed and cut together, and what was done of it. What is said to be done
 * is one transaction over pieces, stages, stock, leftovers and settings, and so is what is taken back. Every call opens
 * the studio's database and may wait, so it is none for the screen's thread.
 */
public final class RunBook {

	private final StudioFolder studio;
	private final Transactions transactions;

	public RunBook(StudioFolder studio) {
		this(studio, Clock.systemUTC());
	}

	/** @param clock tells the time of what is said */
	public RunBook(StudioFolder studio, Clock clock) {
		this.studio = studio;
		transactions = new Transactions(studio, clock, OrderBook.AREA, RunArea.AREA, StockShelf.AREA, Leftovers.AREA,
				SettingsArea.AREA);
	}

	/** @throws OrderException if there is no such run */
	public PlannedRun find(long number) throws IOException, OrderException {
		return transactions.read(connection -> find(connection, number));
	}

	private static PlannedRun find(Connection connection, long number) throws SQLException, OrderException {
		return RunRows.find(connection, number)
				.orElseThrow(() -> new OrderException(NLS.bind(Messages.RunBook_noRun, number)));
	}

	/** Runs something is still to come of, by number. */
	public List<PlannedRun> open() throws IOException, OrderException {
		return transactions.read(RunRows::open);
	}

	/** All runs there ever were, by number. */
	public List<PlannedRun> all() throws IOException, OrderException {
		return transactions.read(RunRows::all);
	}

	/**
	 * Says what was done of a run. Jobs all of whose pieces are printed or cut by now go on to that stage, whatever the
	 * studio's rules say: those were asked when the run was planned, and what is cut is cut.
	 *
	 * @throws OrderException if that cannot be: the run is done, has no such pieces, or not so many
	 */
	public RunResult mark(long number, RunMark mark, String person) throws IOException, OrderException {
		List<Run> proven = mark.wentWell() ? ProvenSettings.of(studio, find(number), mark.remark(), transactions.now())
				: List.of();
		return remembered(transactions.change(connection -> {
			PlannedRun run = find(connection, number);
			CheckedMark.check(run, mark);
			Instant now = transactions.now();
			int place = MarkRows.add(connection, number, mark, now, person);
			List<String> notes = new ArrayList<>(new StockUse(connection, run, place).use(mark));
			ProvenSettings.keep(connection, proven);
			String remark = NLS.bind(mark.step() == Step.PRINT ? Messages.RunBook_printed : Messages.RunBook_cut, number)
					+ (mark.remark().isEmpty() ? "" : ": " + mark.remark());
			StageFollow stages = new StageFollow(connection, now, person);
			List<RunResult.Move> moves = follow(stages, run, mark.step(), place, remark);
			if (mark.closes() && mark.step() == Step.CUT) {
				close(stages, connection, run, mark, place, now, remark);
			}
			return new RunResult(find(connection, number), moves, notes);
		}));
	}

	/** What jobs were made with is looked up when they are cut for good; it takes nothing back if it cannot be. */
	private RunResult remembered(RunResult result) {
		List<String> notes = new ArrayList<>(result.notes());
		result.moves().stream().filter(move -> move.to() == Stage.CUT)
				.forEach(move -> JobStages.remember(studio, move.number()).ifPresent(notes::add));
		return new RunResult(result.run(), result.moves(), notes);
	}

	private static List<RunResult.Move> follow(StageFollow stages, PlannedRun run, Step step, int place, String remark)
			throws SQLException, IOException, OrderException {
		List<RunResult.Move> moves = new ArrayList<>();
		for (String job : new LinkedHashSet<>(run.pieces().stream().map(RunPiece::job).toList())) {
			stages.follow(job, step, run.number(), place, remark).ifPresent(moves::add);
		}
		return moves;
	}

	/** The job that holds the layout has served; it is nobody's order and waits for nothing more. */
	private static void close(StageFollow stages, Connection connection, PlannedRun run, RunMark mark, int place,
			Instant now, String remark) throws SQLException, OrderException {
		boolean untouched = run.marks() == 0 && mark.pieces().stream().allMatch(count -> count.made() + count.spoiled() == 0);
		Entry layout = KeptJobs.find(connection, run.job());
		Stage to = untouched ? Stage.CANCELLED : Stage.DELIVERED;
		if (layout.stage() != to) {
			MarkRows.addMove(connection, run.number(), place, layout.id(), new MarkRows.Move(layout.stage(), to, now));
			stages.move(layout, to, remark);
		}
	}

	/**
	 * Takes back what was said last of a run, as if it had not been said: pieces, stages, stock and leftovers. What was
	 * said stays to be read, and that it was taken back too. A job that somebody has moved on since stays where it is;
	 * so do settings that went well, which are facts.
	 *
	 * @throws OrderException if nothing was said, or there is no such run
	 */
	public RunResult takeBack(long number, String person) throws IOException, OrderException {
		return transactions.change(connection -> {
			PlannedRun run = find(connection, number);
			MarkRows.Said said = MarkRows.last(connection, number)
					.orElseThrow(() -> new OrderException(NLS.bind(Messages.RunBook_nothingSaid, number)));
			Instant now = transactions.now();
			String remark = NLS.bind(Messages.RunBook_takenBack, number);
			List<String> notes = new ArrayList<>(new StockUse(connection, run, said.place()).takeBack());
			int place = MarkRows.takeBack(connection, number, said.place(), now, person, remark);
			StageFollow stages = new StageFollow(connection, now, person);
			List<RunResult.Move> moves = follow(stages, run, said.step(), place, remark);
			reopen(stages, connection, run, remark);
			PlannedRun after = find(connection, number);
			notes.addAll(stayed(connection, after, said.step()));
			return new RunResult(after, moves, notes);
		});
	}

	private static void reopen(StageFollow stages, Connection connection, PlannedRun run, String remark)
			throws SQLException, OrderException {
		Entry layout = KeptJobs.find(connection, run.job());
		Optional<MarkRows.Move> came = MarkRows.move(connection, layout.id(), layout.stage(), layout.since());
		if (came.isPresent()) {
			stages.move(layout, came.get().from(), remark);
		}
	}

	/** Jobs that lack pieces again and are further on all the same. */
	private static List<String> stayed(Connection connection, PlannedRun run, Step step) throws SQLException, OrderException {
		List<String> stayed = new ArrayList<>();
		for (RunPiece piece : run.pieces()) {
			Entry entry = KeptJobs.find(connection, piece.number());
			if (piece.left(step) > 0 && !entry.isClosed() && entry.stage().compareTo(step.stage()) >= 0
					&& entry.stage() != Stage.ON_HOLD) {
				stayed.add(NLS.bind(Messages.RunBook_stays, piece.number(), entry.stage().getLiteral()));
			}
		}
		return stayed.stream().distinct().toList();
	}
}
