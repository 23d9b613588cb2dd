package org.frisket.orders.work;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The jobs that somebody has picked of a day's list, to be laid together. A job is picked whole, in all of its stocks. */
public final class Picks {

	private final Set<Long> numbers = new TreeSet<>();
	private List<TodayLine> lines = List.of();

	/** What there is to be picked from now on; what is not there any more, or wholly on runs, is not picked any more. */
	public void show(Today today) {
		lines = List.of(today.print(), today.cut()).stream().flatMap(List::stream).flatMap(group -> group.lines().stream())
				.toList();
		numbers.retainAll(new HashSet<>(lines.stream().filter(line -> line.unplanned() > 0)
				.map(line -> line.entry().number()).toList()));
	}

	/** Whether a line has something that can be laid. */
	public static boolean isPickable(TodayLine line) {
		return line.unplanned() > 0;
	}

	/** @param on else it is not picked any more */
	public void pick(TodayLine line, boolean on) {
		if (!on) {
			numbers.remove(line.entry().number());
		} else if (isPickable(line)) {
			numbers.add(line.entry().number());
		}
	}

	public boolean has(TodayLine line) {
		return numbers.contains(line.entry().number());
	}

	/** By number. */
	public List<Long> numbers() {
		return List.copyOf(numbers);
	}

	/** How many pieces there are to be laid of what is picked. */
	public int pieces() {
		return lines.stream().filter(this::has).mapToInt(TodayLine::unplanned).sum();
	}
}
