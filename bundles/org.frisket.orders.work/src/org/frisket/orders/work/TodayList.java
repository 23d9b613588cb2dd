package org.frisket.orders.work;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.internal.JobRows;
import org.frisket.orders.internal.KeptJobs;
import org.frisket.orders.internal.Transactions;
import org.frisket.orders.work.internal.RunRows;
import org.frisket.orders.work.internal.Tally;
import org.frisket.studio.StudioFolder;

/**
 * Tells what is to be done today. Only the documents of jobs at the stages in question are read, and each of them once as
 * long as this is kept; a call opens the studio's database and may wait, so it is none for the screen's thread. Safe for
 * use by several threads.
 */
public final class TodayList {

	private static final List<Stage> STAGES = List.of(Stage.APPROVED, Stage.PRINTED, Stage.CUT);

	private record Known(long revision, List<Need> needs) {
	}

	private final Transactions transactions;
	private Map<String, Known> known = Map.of();

	public TodayList(StudioFolder studio) {
		transactions = new Transactions(studio, Clock.systemUTC(), OrderBook.AREA, RunArea.AREA);
	}

	/** @param day of the studio's calendar */
	public synchronized Today read(LocalDate day) throws IOException, OrderException {
		return transactions.read(connection -> read(connection, day));
	}

	private Today read(Connection connection, LocalDate day) throws SQLException, IOException {
		List<PlannedRun> runs = RunRows.open(connection);
		// what holds a layout is nobody's order
		Set<String> layouts = new HashSet<>(RunRows.layouts(connection));
		Tally tally = Tally.atStages(connection, STAGES);
		Map<String, Known> now = new HashMap<>();
		List<TodayLine> print = new ArrayList<>();
		List<TodayLine> cut = new ArrayList<>();
		List<TodayLine> finish = new ArrayList<>();
		List<String> problems = new ArrayList<>();
		for (Entry entry : JobRows.atStages(connection, STAGES)) {
			if (layouts.contains(entry.id())) {
				continue;
			}
			if (entry.stage() == Stage.CUT) {
				finish.add(finished(entry));
				continue;
			}
			try {
				now.put(entry.id(), known(connection, entry));
			} catch (OrderException damaged) {
				problems.add(damaged.getMessage());
				continue;
			}
			sort(entry, now.get(entry.id()).needs(), tally, new Lists(print, cut, finish, problems));
		}
		known = now;
		finish.sort(TodayLine.BY_DUE);
		return new Today(day, Today.grouped(print), Today.grouped(cut), finish, runs, problems);
	}

	private Known known(Connection connection, Entry entry) throws SQLException, OrderException {
		Known before = known.get(entry.id());
		return before != null && before.revision() == entry.revision() ? before
				: new Known(entry.revision(), Need.of(KeptJobs.load(connection, entry)));
	}

	private record Lists(List<TodayLine> print, List<TodayLine> cut, List<TodayLine> finish, List<String> problems) {
	}

	private static void sort(Entry entry, List<Need> needs, Tally tally, Lists lists) {
		if (needs.isEmpty()) {
			lists.problems().add(NLS.bind(Messages.TodayList_nothing, entry.number(), entry.title()));
			return;
		}
		List<TodayLine> print = entry.stage() == Stage.APPROVED ? lacking(entry, needs, tally, Step.PRINT) : List.of();
		List<TodayLine> cut = lacking(entry, needs, tally, Step.CUT);
		if (!print.isEmpty()) {
			lists.print().addAll(print);
		} else if (!cut.isEmpty()) {
			lists.cut().addAll(cut);
		} else {
			lists.finish().add(finished(entry));
		}
	}

	private static TodayLine finished(Entry entry) {
		return new TodayLine(entry, new StockColour("", ""), entry.quantity(), entry.quantity(), 0);
	}

	static List<TodayLine> lacking(Entry entry, List<Need> needs, Tally tally, Step step) {
		return needs.stream().filter(need -> need.has(step))
				.map(need -> new TodayLine(entry, need.of(), entry.quantity(), tally.made(entry.id(), need.of(), step),
						tally.coming(entry.id(), need.of(), step)))
				.filter(line -> line.missing() > 0).toList();
	}
}
