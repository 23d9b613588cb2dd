package org.frisket.toolpath.internal.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.toolpath.order.Stops;
import org.frisket.toolpath.order.Tour;

/**
 * An order in which whatever has to wait comes right after what it waits for: part by part. The outermost are toured as
 * if nothing were in them, then what is in each on the way from the one before it, and so on inwards. A way through all
 * of them at once could hardly be made shorter: few stretches of it could be turned round.
 */
final class NestedOrder {

	/** Those that one waits for, and between which places they come. */
	private record Level(int[] errands, int around, Point start, Point end) {
	}

	private final Point[] places;
	private final int[] after;
	private final long shuffles;
	private final long seed;
	private final Monitor monitor;
	/** By errand what it waits for, in their order once they have one; last those that nothing waits for. */
	private final int[][] inner;

	private NestedOrder(Point[] places, int[] after, long shuffles, long seed, Monitor monitor) {
		this.places = places;
		this.after = after;
		this.shuffles = shuffles;
		this.seed = seed;
		this.monitor = monitor;
		inner = new int[places.length + 1][];
	}

	/** @param places about where each errand is */
	static int[] of(Stops stops, Point[] places, Route.Task task, long shuffles, long seed, Monitor monitor) {
		if (Arrays.stream(task.after()).allMatch(after -> after < 0)) {
			return Tour.of(stops, task.start(), task.end(), shuffles, seed, monitor).order();
		}
		return new NestedOrder(places, task.after(), shuffles, seed, monitor).order(task.start(), task.end());
	}

	private int[] order(Point start, Point end) {
		int n = places.length;
		List<List<Integer>> waitedFor = new ArrayList<>();
		for (int i = 0; i <= n; i++) {
			waitedFor.add(new ArrayList<>());
		}
		for (int i = 0; i < n; i++) {
			waitedFor.get(after[i] < 0 ? n : after[i]).add(i);
		}
		for (int i = 0; i <= n; i++) {
			inner[i] = waitedFor.get(i).stream().mapToInt(Integer::intValue).toArray();
		}
		Deque<Level> levels = new ArrayDeque<>(List.of(new Level(inner[n], n, start, end)));
		while (!levels.isEmpty()) {
			Level level = levels.pop();
			monitor.check();
			int[] order = tour(level);
			inner[level.around] = order;
			Point before = level.start;
			for (int errand : order) {
				if (inner[errand].length > 0) {
					levels.push(new Level(inner[errand], errand, before, places[errand]));
				}
				before = places[errand];
			}
		}
		return flat();
	}

	private int[] tour(Level level) {
		int count = level.errands.length;
		Point[] own = Arrays.stream(level.errands).mapToObj(i -> places[i]).toArray(Point[]::new);
		int[] none = new int[count];
		Arrays.fill(none, -1);
		int[] order = Tour.of(new Stops(own, own, none), level.start, level.end, shuffles * count / places.length, seed,
				monitor).order();
		return Arrays.stream(order).map(i -> level.errands[i]).toArray();
	}

	/** All of them, each after those that it waits for. From the back, as those come after it there. */
	private int[] flat() {
		int[] flat = new int[places.length];
		int at = flat.length;
		Deque<Integer> open = new ArrayDeque<>();
		for (int errand : inner[places.length]) {
			open.push(errand);
		}
		while (!open.isEmpty()) {
			int errand = open.pop();
			flat[--at] = errand;
			for (int within : inner[errand]) {
				open.push(within);
			}
		}
		return flat;
	}
}
