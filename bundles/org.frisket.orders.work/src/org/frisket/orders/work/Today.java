package org.frisket.orders.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.frisket.orders.Entry;

/**
 * What is to be done. A job is in each stock and colour that it lacks pieces of, so that it can be laid with others of the
 * same; sheets to be printed come before they are cut.
 *
 * @param print    approved jobs that are to be printed
 * @param cut      approved or printed jobs that are to be cut
 * @param finish   jobs that are cut, or printed and not to be cut
 * @param runs     that something is still to come of
 * @param problems jobs that cannot be told, a sentence each: their documents are damaged, or nothing is designed
 */
public record Today(LocalDate day, List<Group> print, List<Group> cut, List<TodayLine> finish, List<PlannedRun> runs,
		List<String> problems) {

	/**
	 * What can lie on the same sheets.
	 *
	 * @param lines by the day they are due
	 */
	public record Group(StockColour of, List<TodayLine> lines) {

		public Group {
			lines = List.copyOf(lines);
		}

		/** Of all its jobs. */
		public int missing() {
			return lines.stream().mapToInt(TodayLine::missing).sum();
		}
	}

	public Today {
		print = List.copyOf(print);
		cut = List.copyOf(cut);
		finish = List.copyOf(finish);
		runs = List.copyOf(runs);
		problems = List.copyOf(problems);
	}

	/** Groups with what is due first at the top. */
	static List<Group> grouped(List<TodayLine> lines) {
		Map<StockColour, List<TodayLine>> byStock = new TreeMap<>();
		lines.stream().sorted(TodayLine.BY_DUE)
				.forEach(line -> byStock.computeIfAbsent(line.of(), of -> new ArrayList<>()).add(line));
		List<Group> groups = new ArrayList<>();
		byStock.forEach((of, own) -> groups.add(new Group(of, own)));
		groups.sort(Comparator.comparing((Group group) -> group.lines().get(0).entry().due().orElse(LocalDate.MAX))
				.thenComparing(Group::of));
		return groups;
	}

	public boolean isEmpty() {
		return print.isEmpty() && cut.isEmpty() && finish.isEmpty() && runs.isEmpty();
	}

	/** Whether a job should be ready by this day, or should have been. */
	public boolean presses(Entry entry) {
		return entry.due().filter(due -> !due.isAfter(day)).isPresent();
	}
}
