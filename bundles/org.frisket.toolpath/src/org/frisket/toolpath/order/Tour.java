package org.frisket.toolpath.order;

import java.util.Arrays;
import java.util.SplittableRandom;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;

/**
 * A short way through all stops that makes none too early. It begins with the nearest stop that need not wait, again and
 * again; stretches are then turned round (2-opt) and moved elsewhere (Or-opt) as long as that is shorter; after that small
 * places are shuffled and mended again, and kept if shorter (iterated local search with double bridges: Johnson and
 * McGeoch, The traveling salesman problem: a case study, 1997; from memory).
 */
public final class Tour {

	private static final int NEIGHBOURS = 10;
	/** Stops that are moved together at most. */
	private static final int MOVED = 3;
	/** How far apart the ends of a shuffle are at most, in stops. */
	private static final int NEAR = 50;
	private static final double GAIN = 1e-9;
	private static final int CHECK_EVERY = 256;

	private final Stops stops;
	private final double startX;
	private final double startY;
	/** Whether the way ends where it began. */
	private final boolean back;
	private final int n;
	private final int[][] near;
	/** How far these are, by the nearer of their ends. */
	private final double[][] nearWay;
	private final int[][] before;
	/** The stops in their order, and where each stands in it. */
	private int[] order;
	private int[] place;
	/** Which are made the other way round. */
	private boolean[] turned;
	/** Stops whose surroundings have changed. */
	private final int[] queue;
	private final boolean[] queued;
	private int queueStart;
	private int queueSize;
	/** Turned stretches since the last shuffle, to go back. */
	private int[] log = new int[64];
	private int logged;
	private double length;
	/** Whether anything has to wait. */
	private final boolean waiting;

	private Tour(Stops stops, Point start, boolean back) {
		this.stops = stops;
		startX = start.x();
		startY = start.y();
		this.back = back;
		n = stops.count;
		near = new int[n][];
		nearWay = new double[n][];
		before = new int[n][];
		int[] counts = new int[n];
		for (int i = 0; i < n; i++) {
			if (stops.after[i] >= 0) {
				counts[stops.after[i]]++;
			}
		}
		for (int i = 0; i < n; i++) {
			before[i] = new int[counts[i]];
		}
		for (int i = n - 1; i >= 0; i--) {
			if (stops.after[i] >= 0) {
				before[stops.after[i]][--counts[stops.after[i]]] = i;
			}
		}
		if (n > 1) {
			Nearest nearest = new Nearest(stops, NEIGHBOURS);
			for (int i = 0; i < n; i++) {
				near[i] = nearest.of(i);
				nearWay[i] = ways(i);
			}
		} else if (n == 1) {
			near[0] = new int[0];
			nearWay[0] = new double[0];
		}
		waiting = Arrays.stream(stops.after).anyMatch(after -> after >= 0);
		order = new int[n];
		place = new int[n];
		turned = new boolean[n];
		queue = new int[n + 1];
		queued = new boolean[n];
	}

	/**
	 * @param start   where the way begins
	 * @param back    whether it leads back there
	 * @param shuffles how many places are shuffled at most
	 * @param seed    of what is shuffled
	 * @param monitor when cancelled the best so far is taken
	 */
	public static Tour of(Stops stops, Point start, boolean back, long shuffles, long seed, Monitor monitor) {
		Tour tour = new Tour(stops, start, back);
		if (tour.n > 0) {
			tour.begin();
			for (int i = 0; i < tour.n; i++) {
				tour.push(tour.order[i]);
			}
			tour.mend();
			tour.shuffle(shuffles, new SplittableRandom(seed), monitor);
		}
		return tour;
	}

	private double[] ways(int stop) {
		double[] ways = new double[near[stop].length];
		for (int k = 0; k < ways.length; k++) {
			int other = near[stop][k];
			ways[k] = Math.min(nearer(other, stops.inX[stop], stops.inY[stop]),
					nearer(other, stops.outX[stop], stops.outY[stop]));
		}
		return ways;
	}

	/** By nearest neighbours alone; what others are measured against. */
	public static Tour nearest(Stops stops, Point start, boolean back) {
		Tour tour = new Tour(stops, start, back);
		if (tour.n > 0) {
			tour.begin();
		}
		return tour;
	}

	/** The stops as they are made. */
	public int[] order() {
		return order.clone();
	}

	/** Whether a stop is made from where it is left to where it is entered. */
	public boolean isTurned(int stop) {
		return turned[stop];
	}

	/** Of the way between the stops, from the start on, in mm. */
	public double travel() {
		return measure();
	}

	private double measure() {
		double sum = 0;
		for (int i = 0; i <= n; i++) {
			sum += gap(i);
		}
		return sum;
	}

	// ends of stops, as they are made now

	private double enterX(int stop) {
		return turned[stop] ? stops.outX[stop] : stops.inX[stop];
	}

	private double enterY(int stop) {
		return turned[stop] ? stops.outY[stop] : stops.inY[stop];
	}

	private double leaveX(int stop) {
		return turned[stop] ? stops.inX[stop] : stops.outX[stop];
	}

	private double leaveY(int stop) {
		return turned[stop] ? stops.inY[stop] : stops.outY[stop];
	}

	/** The way to the stop at a place from the one before; at n the way back. */
	private double gap(int at) {
		return between(at - 1, at);
	}

	/** From where the stop at one place is left to where that at another is entered. */
	private double between(int from, int to) {
		if (to == n) {
			return back && n > 0 ? way(from < 0 ? startX : leaveX(order[from]), from < 0 ? startY : leaveY(order[from]),
					startX, startY) : 0;
		}
		return way(from < 0 ? startX : leaveX(order[from]), from < 0 ? startY : leaveY(order[from]), enterX(order[to]),
				enterY(order[to]));
	}

	/** Between where two are left: after a stretch is turned. */
	private double leaves(int from, int to) {
		return way(from < 0 ? startX : leaveX(order[from]), from < 0 ? startY : leaveY(order[from]), leaveX(order[to]),
				leaveY(order[to]));
	}

	/** Between where two are entered. */
	private double enters(int from, int to) {
		if (to == n) {
			return back ? way(enterX(order[from]), enterY(order[from]), startX, startY) : 0;
		}
		return way(enterX(order[from]), enterY(order[from]), enterX(order[to]), enterY(order[to]));
	}

	private static double way(double ax, double ay, double bx, double by) {
		double dx = ax - bx;
		double dy = ay - by;
		return Math.sqrt(dx * dx + dy * dy);
	}

	// the beginning

	private void begin() {
		int[] waits = new int[n];
		for (int i = 0; i < n; i++) {
			waits[i] = before[i].length;
		}
		boolean[] made = new boolean[n];
		int[] open = new int[n];
		int size = 0;
		for (int i = 0; i < n; i++) {
			if (waits[i] == 0) {
				open[size++] = i;
			}
		}
		double x = startX;
		double y = startY;
		for (int at = 0; at < n; at++) {
			int best = -1;
			double least = Double.POSITIVE_INFINITY;
			int last = at == 0 ? -1 : order[at - 1];
			if (last >= 0) {
				for (int next : near[last]) {
					double d = made[next] || waits[next] > 0 ? Double.POSITIVE_INFINITY : nearer(next, x, y);
					if (d < least) {
						least = d;
						best = next;
					}
				}
			}
			if (best < 0) {
				int kept = 0;
				for (int i = 0; i < size; i++) {
					if (!made[open[i]]) {
						open[kept++] = open[i];
						double d = nearer(open[i], x, y);
						if (d < least) {
							least = d;
							best = open[i];
						}
					}
				}
				size = kept;
			}
			made[best] = true;
			order[at] = best;
			place[best] = at;
			turned[best] = way(x, y, stops.outX[best], stops.outY[best]) < way(x, y, stops.inX[best], stops.inY[best]);
			x = leaveX(best);
			y = leaveY(best);
			int next = stops.after[best];
			if (next >= 0 && --waits[next] == 0) {
				open[size++] = next;
			}
		}
		length = measure();
	}

	private double nearer(int stop, double x, double y) {
		return Math.min(way(x, y, stops.inX[stop], stops.inY[stop]), way(x, y, stops.outX[stop], stops.outY[stop]));
	}

	// shorter and shorter

	private void push(int stop) {
		if (!queued[stop]) {
			queued[stop] = true;
			queue[(queueStart + queueSize++) % queue.length] = stop;
		}
	}

	private void pushAt(int at) {
		if (at >= 0 && at < n) {
			push(order[at]);
		}
	}

	private void mend() {
		while (queueSize > 0) {
			int stop = queue[queueStart];
			queueStart = (queueStart + 1) % queue.length;
			queueSize--;
			queued[stop] = false;
			while (better(stop)) {
				// again from where it stands now
			}
		}
	}

	private boolean better(int stop) {
		int at = place[stop];
		if (stops.inX[stop] != stops.outX[stop] || stops.inY[stop] != stops.outY[stop]) {
			if (turn(at, at)) {
				return true;
			}
		}
		// what is gained has to come from a way that is given up here
		double longest = Math.max(gap(at), gap(at + 1));
		for (int k = 0; k < near[stop].length && nearWay[stop][k] < longest; k++) {
			int there = place[near[stop][k]];
			// side by side by turning what lies between, at either end
			if (at < there && (turn(at + 1, there) || turn(at, there - 1))
					|| there < at && (turn(there + 1, at) || turn(there, at - 1))) {
				return true;
			}
		}
		return move(stop, longest) || turn(0, at) || turn(at, n - 1);
	}

	/** Turns the stretch from one place to another round if that is shorter and nothing has to wait in it. */
	private boolean turn(int from, int to) {
		if (from > to) {
			return false;
		}
		double gain = gap(from) + gap(to + 1) - leaves(from - 1, to) - enters(from, to + 1);
		if (gain <= GAIN || !mayTurn(from, to)) {
			return false;
		}
		reverse(from, to);
		length -= gain;
		pushAt(from - 1);
		pushAt(from);
		pushAt(to);
		pushAt(to + 1);
		return true;
	}

	private boolean mayTurn(int from, int to) {
		if (!waiting) {
			return true;
		}
		for (int i = from; i < to; i++) {
			int after = stops.after[order[i]];
			if (after >= 0 && place[after] <= to) {
				return false;
			}
		}
		return true;
	}

	private void reverse(int from, int to) {
		for (int i = from, j = to; i <= j; i++, j--) {
			int a = order[i];
			int b = order[j];
			order[i] = b;
			order[j] = a;
			place[b] = i;
			place[a] = j;
			turned[a] = !turned[a];
			if (a != b) {
				turned[b] = !turned[b];
			}
		}
		if (logged + 2 > log.length) {
			log = Arrays.copyOf(log, 2 * log.length);
		}
		log[logged++] = from;
		log[logged++] = to;
	}

	/** Moves up to three stops, of which the one here is the first or last, next to one of those that are near. */
	private boolean move(int stop, double longest) {
		int at = place[stop];
		for (int many = 1; many <= MOVED; many++) {
			for (int side = 0; side < (many == 1 ? 1 : 2); side++) {
				int from = side == 0 ? at : at - many + 1;
				int to = from + many - 1;
				if (from < 0 || to >= n) {
					continue;
				}
				double freed = gap(from) + gap(to + 1) - between(from - 1, to + 1);
				for (int k = 0; freed > GAIN && k < near[stop].length && nearWay[stop][k] < longest; k++) {
					int there = place[near[stop][k]];
					if ((there < from || there > to)
							&& (move(from, to, there, freed) || move(from, to, there - 1, freed))) {
						return true;
					}
				}
			}
		}
		return false;
	}

	/** Moves a stretch behind a place, either way round. @param freed by taking it away from where it is */
	private boolean move(int from, int to, int behind, double freed) {
		if (behind >= from - 1 && behind <= to) {
			return false;
		}
		double gain = freed + gap(behind + 1);
		double straight = gain - between(behind, from) - between(to, behind + 1);
		double round = gain - leaves(behind, to) - enters(from, behind + 1);
		if (Math.max(straight, round) <= GAIN || !mayMove(from, to, behind)) {
			return false;
		}
		boolean turn = round > straight;
		if (turn && !mayTurn(from, to)) {
			if (straight <= GAIN) {
				return false;
			}
			turn = false;
		}
		shift(from, to, behind, turn);
		length -= turn ? round : straight;
		return true;
	}

	private boolean mayMove(int from, int to, int behind) {
		if (!waiting) {
			return true;
		}
		for (int i = from; i <= to; i++) {
			int stop = order[i];
			if (behind > to) {
				int after = stops.after[stop];
				if (after >= 0 && place[after] <= behind && place[after] > to) {
					return false;
				}
			} else {
				for (int earlier : before[stop]) {
					if (place[earlier] > behind && place[earlier] < from) {
						return false;
					}
				}
			}
		}
		return true;
	}

	/** By turning stretches, so that going back is the same. */
	private void shift(int from, int to, int behind, boolean turn) {
		int many = to - from + 1;
		int first;
		if (behind > to) {
			reverse(from, behind);
			first = behind - many + 1;
			reverse(from, behind - many);
		} else {
			reverse(behind + 1, to);
			first = behind + 1;
			reverse(behind + 1 + many, to);
		}
		// it lies turned by now
		if (!turn) {
			reverse(first, first + many - 1);
		}
		pushAt(from - 1);
		pushAt(from);
		pushAt(to);
		pushAt(to + 1);
		pushAt(first - 1);
		pushAt(first);
		pushAt(first + many - 1);
		pushAt(first + many);
	}

	// shuffling

	private void shuffle(long most, SplittableRandom random, Monitor monitor) {
		if (n < 8) {
			return;
		}
		for (long i = 0; i < most; i++) {
			if (i % CHECK_EVERY == 0 && monitor.isCancelled()) {
				return;
			}
			double kept = length;
			logged = 0;
			int span = Math.min(NEAR, n - 1);
			int from = random.nextInt(n - Math.min(span, n - 3));
			int a = from + random.nextInt(Math.max(1, span / 3));
			int b = a + 1 + random.nextInt(Math.max(1, span / 3));
			int c = b + 1 + random.nextInt(Math.max(1, span / 3));
			if (c >= n || !bridge(a, b, c)) {
				continue;
			}
			mend();
			if (length > kept - GAIN) {
				undo();
				length = kept;
			}
		}
		// of all the small differences
		length = measure();
	}

	/** Two stretches side by side change places: from a to before b, and from b to c. */
	private boolean bridge(int a, int b, int c) {
		for (int i = a; i < b; i++) {
			int after = stops.after[order[i]];
			if (after >= 0 && place[after] >= b && place[after] <= c) {
				return false;
			}
		}
		double before = gap(a) + gap(b) + gap(c + 1);
		reverse(a, c);
		int middle = a + c - b;
		reverse(a, middle);
		reverse(middle + 1, c);
		length += gap(a) + gap(middle + 1) + gap(c + 1) - before;
		pushAt(a - 1);
		pushAt(a);
		pushAt(middle);
		pushAt(middle + 1);
		pushAt(c);
		pushAt(c + 1);
		return true;
	}

	private void undo() {
		for (int i = logged - 2; i >= 0; i -= 2) {
			int end = logged;
			reverse(log[i], log[i + 1]);
			logged = end;
		}
		logged = 0;
	}
}
