package org.frisket.toolpath.internal.plan;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.toolpath.order.Stops;
import org.frisket.toolpath.order.Tour;

/**
 * An order of errands and where each is begun. A tour through their middles, part by part, gives a first order; for an
 * order the best places to begin at are found exactly; with these the order is made shorter, and so on as long as that
 * helps.
 *
 * @param order  the errands by number
 * @param gates  for each errand, by its number, the gate
 * @param travel the way between them in mm, from the start and on to the end
 */
record Route(int[] order, int[] gates, double travel) {

	private static final int MOST_ROUNDS = 6;
	private static final double GAIN = 1e-9;

	/**
	 * What is to be ordered.
	 *
	 * @param after for each errand the one that has to wait for it, or -1
	 * @param start where the way begins
	 * @param end   where it leads afterwards; null if it ends with the last errand
	 */
	record Task(List<Errand> errands, int[] after, Point start, Point end) {
	}

	static Route of(Task task, long shuffles, long seed, Monitor monitor) {
		int n = task.errands.size();
		List<List<Errand.Gate>> gates = new ArrayList<>(n);
		Point[] in = new Point[n];
		Point[] out = new Point[n];
		for (int i = 0; i < n; i++) {
			List<Errand.Gate> own = task.errands.get(i).gates();
			gates.add(own);
			boolean many = own.size() > 2;
			in[i] = many ? middle(own) : own.get(0).in();
			out[i] = many ? in[i] : own.get(0).out();
		}
		monitor.check();
		int[] order = NestedOrder.of(new Stops(in, out, task.after), in, task, shuffles / 2, seed, monitor);
		Route best = through(order, gates, task);
		for (int round = 1; round <= MOST_ROUNDS; round++) {
			for (int i = 0; i < n; i++) {
				in[i] = gates.get(i).get(best.gates[i]).in();
				out[i] = gates.get(i).get(best.gates[i]).out();
			}
			Stops stops = new Stops(in, out, task.after);
			long effort = round == 1 ? shuffles / 4 : shuffles / 16;
			monitor.check();
			Route next = through(Tour.from(best.order, stops, task.start, task.end, effort, seed + round, monitor).order(),
					gates, task);
			if (round == 1 && n > 1) {
				// parts that are worked into each other may be shorter
				monitor.check();
				Route other = through(Tour.of(stops, task.start, task.end, effort, seed, monitor).order(), gates, task);
				next = other.travel < next.travel - GAIN ? other : next;
			}
			if (next.travel >= best.travel - GAIN) {
				break;
			}
			best = next;
		}
		monitor.check();
		return best;
	}

	private static Point middle(List<Errand.Gate> gates) {
		double x = 0;
		double y = 0;
		for (Errand.Gate gate : gates) {
			x += gate.in().x();
			y += gate.in().y();
		}
		return new Point(x / gates.size(), y / gates.size());
	}

	/** The shortest way through errands in a given order: for each gate of one the best of the one before. */
	private static Route through(int[] order, List<List<Errand.Gate>> gates, Task task) {
		int n = order.length;
		int[][] from = new int[n][];
		double[] way = { 0 };
		List<Errand.Gate> before = List.of(new Errand.Gate(task.start, task.start));
		for (int at = 0; at < n; at++) {
			List<Errand.Gate> own = gates.get(order[at]);
			double[] next = new double[own.size()];
			from[at] = new int[own.size()];
			for (int g = 0; g < next.length; g++) {
				from[at][g] = best(before, way, own.get(g).in());
				next[g] = way[from[at][g]] + before.get(from[at][g]).out().distance(own.get(g).in());
			}
			way = next;
			before = own;
		}
		int gate = best(before, way, task.end);
		double travel = way[gate] + (task.end == null || n == 0 ? 0 : before.get(gate).out().distance(task.end));
		int[] chosen = new int[n];
		for (int at = n - 1; at >= 0; at--) {
			chosen[order[at]] = gate;
			gate = from[at][gate];
		}
		return new Route(order, chosen, travel);
	}

	private static int best(List<Errand.Gate> gates, double[] way, Point next) {
		int best = 0;
		double least = Double.POSITIVE_INFINITY;
		for (int g = 0; g < way.length; g++) {
			double sum = way[g] + (next == null ? 0 : gates.get(g).out().distance(next));
			if (sum < least) {
				least = sum;
				best = g;
			}
		}
		return best;
	}
}
