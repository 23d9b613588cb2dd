package org.frisket.orders.work.internal;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.trials.JdbcSettingsStore;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.Verdict;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunPiece;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.run.MachineRun;
import org.frisket.run.Workshop;
import org.frisket.run.paper.LegText;
import org.frisket.studio.StudioFolder;

/** The settings that a run was worked with, kept for the next time because it went well. */
public final class ProvenSettings {

	/** As the table has it. */
	private static final int LONGEST_REMARK = 2000;

	/** Legs of a run that are worked the same way are one. */
	private record Way(StockFacts stock, Setup setup, Settings settings) {
	}

	private ProvenSettings() {
	}

	/**
	 * Works out what the machine did; reads the order book, and takes its time. The metres are shared among the jobs by the
	 * pieces they have on the run, so that each of them finds its settings again and an edge wears once.
	 */
	public static List<Run> of(StudioFolder studio, PlannedRun planned, String remark, Instant at)
			throws IOException, OrderException {
		Workshop workshop = Workshop.of(SettingsDesk.look(studio));
		Map<Way, Double> metres = new LinkedHashMap<>();
		for (MachineRun run : RunWork.of(new OrderBook(studio).open(planned.job()).job(), studio, workshop,
				new JobPreparer(FontLibraries.installed()))) {
			for (int i = 0; i < run.work().size(); i++) {
				Setup setup = new Setup(workshop.machine().id(), run.work().get(i).tool().id(),
						LegText.kind(run.run().legs().get(i).stage()));
				metres.merge(new Way(run.work().get(i).stock(), setup, run.work().get(i).settings()), run.metres(i),
						Double::sum);
			}
		}
		Map<String, Integer> pieces = new TreeMap<>();
		planned.pieces().forEach(piece -> pieces.merge(piece.job(), piece.pieces(), Integer::sum));
		double all = planned.pieces().stream().mapToInt(RunPiece::pieces).sum();
		List<Run> runs = new ArrayList<>();
		metres.forEach((way, length) -> pieces.forEach((job, count) -> runs.add(
				new Run("made-" + planned.number() + '-' + (runs.size() + 1), at, job, way.stock(), way.setup(), way.settings(),
						Verdict.THROUGH, length * count / all,
						remark.substring(0, Math.min(remark.length(), LONGEST_REMARK))))));
		return runs;
	}

	/** Keeps them once, however often it is said that the run went well. */
	public static void keep(Connection connection, List<Run> runs) throws SQLException {
		if (runs.isEmpty()) {
			return;
		}
		JdbcSettingsStore settings = new JdbcSettingsStore(connection);
		Set<String> there = new HashSet<>();
		settings.runs().forEach(run -> there.add(run.id()));
		for (Run run : runs) {
			if (!there.contains(run.id())) {
				settings.add(run);
			}
		}
	}
}
