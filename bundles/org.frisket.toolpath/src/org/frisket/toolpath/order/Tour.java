package org.frisket.toolpath.order;

import java.util.SplittableRandom;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;

/**
 * A short way through all stops that makes none too early. It begins with the nearest stop that need not wait, again and
 * again; stretches are then turned round (2-opt) and moved elsewhere (Or-opt) as long as that is shorter; after that small
 * places are shuffled and mended again, and kept if shorter (iterated local search with double bridges: Johnson and
 * McGeoch, The traveling salesman problem: a case study, 1997; from memory). Of a few stops the shortest way is found.
 */
public final class Tour {

	private static final int NEIGHBOURS = 10;
	/** Stops that are moved together at most. */
	private static final int MOVED = 6;
	/** How far apart the ends of a shuffle are at most, in stops. */
	private static final int NEAR = 50;
	private static final double GAIN = 1e-9;
	/** With fewer there is nothing to shuffle. */
	private static final int FEWEST = 8;
	private static final int CHECK_EVERY = 256;

	private final Sequence sequence;
	private final Neighbours neighbours;
	private final Stops stops;
	private final int n;
	/** Stops whose surroundings have changed. */
	private final int[] queue;
	private final boolean[] queued;
	private int queueStart;
	private int queueSize;
	/** Of the way, kept up to date by what is gained. */
	private double length;

	/** @param order to begin with; null for that of nearest neighbours */
	private Tour(Stops stops, Point start, Point end, int[] order) {
		this.stops = stops;
		n = stops.count;
		sequence = new Sequence(stops, start, end);
		neighbours = new Neighbours(stops, NEIGHBOURS);
		queue = new int[n + 1];
		queued = new boolean[n];
		if (order == null) {
			Beginning.of(sequence, neighbours);
		} else {
			sequence.set(order);
		}
		length = sequence.measure();
	}

	/**
	 * @param start    where the way begins
	 * @param back     whether it leads back there
	 * @param shuffles how many places are shuffled at most
	 * @param seed     of what is shuffled
	 * @param monitor  when cancelled the best so far is taken
	 */
	public static Tour of(Stops stops, Point start, boolean back, long shuffles, long seed, Monitor monitor) {
		return of(stops, start, back ? start : null, shuffles, seed, monitor);
	}

	/**
	 * The same with another end.
	 *
	 * @param end where the way leads after the last stop; null if it ends there
	 */
	public static Tour of(Stops stops, Point start, Point end, long shuffles, long seed, Monitor monitor) {
		return from(null, stops, start, end, shuffles, seed, monitor);
	}

	/**
	 * The same from an order that is known, which is made shorter.
	 *
	 * @param order all stops, none too early
	 */
	public static Tour from(int[] order, Stops stops, Point start, Point end, long shuffles, long seed, Monitor monitor) {
		Tour tour = new Tour(stops, start, end, order);
		if (stops.count <= Exhaustive.MOST) {
			new Exhaustive(tour.sequence).apply();
			tour.length = tour.sequence.measure();
			return tour;
		}
		for (int stop : tour.order()) {
			tour.push(stop);
		}
		tour.mend();
		tour.shuffle(shuffles, new SplittableRandom(seed), monitor);
		return tour;
	}

	/** By nearest neighbours alone; what others are measured against. */
	public static Tour nearest(Stops stops, Point start, boolean back) {
		return new Tour(stops, start, back ? start : null, null);
	}

	/** The stops as they are made. */
	public int[] order() {
		return sequence.order.clone();
	}

	/** Whether a stop is made from where it is left to where it is entered. */
	public boolean isTurned(int stop) {
		return sequence.turned[stop];
	}

	/** Of the way between the stops, from the start on, in mm. */
	public double travel() {
		return sequence.measure();
	}

	private void push(int stop) {
		if (!queued[stop]) {
			queued[stop] = true;
			queue[(queueStart + queueSize++) % queue.length] = stop;
		}
	}

	private void pushAt(int at) {
		if (at >= 0 && at < n) {
			push(sequence.order[at]);
		}
	}

	/** The stops at both ends of a stretch, and those next to it. */
	private void pushEnds(int from, int to) {
		pushAt(from - 1);
		pushAt(from);
		pushAt(to);
		pushAt(to + 1);
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
		int at = sequence.place[stop];
		if (stops.inX[stop] != stops.outX[stop] || stops.inY[stop] != stops.outY[stop]) {
			if (turn(at, at)) {
				return true;
			}
		}
		int[] near = neighbours.of(stop);
		double[] ways = neighbours.ways(stop);
		// what is gained has to come from a way that is given up here
		double longest = Math.max(sequence.gap(at), sequence.gap(at + 1));
		for (int k = 0; k < near.length && ways[k] < longest; k++) {
			int there = sequence.place[near[k]];
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
		double gain = sequence.gap(from) + sequence.gap(to + 1) - sequence.leaves(from - 1, to) - sequence.enters(from, to + 1);
		if (gain <= GAIN || !sequence.mayTurn(from, to)) {
			return false;
		}
		sequence.reverse(from, to);
		length -= gain;
		pushEnds(from, to);
		return true;
	}

	/** Moves some stops, of which the one here is the first or last, next to one of those that are near. */
	private boolean move(int stop, double longest) {
		int[] near = neighbours.of(stop);
		double[] ways = neighbours.ways(stop);
		int at = sequence.place[stop];
		for (int many = 1; many <= MOVED; many++) {
			for (int side = 0; side < (many == 1 ? 1 : 2); side++) {
				int from = side == 0 ? at : at - many + 1;
				int to = from + many - 1;
				if (from < 0 || to >= n) {
					continue;
				}
				double freed = sequence.gap(from) + sequence.gap(to + 1) - sequence.between(from - 1, to + 1);
				for (int k = 0; freed > GAIN && k < near.length && ways[k] < longest; k++) {
					int there = sequence.place[near[k]];
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
		double gain = freed + sequence.gap(behind + 1);
		double straight = gain - sequence.between(behind, from) - sequence.between(to, behind + 1);
		double round = gain - sequence.leaves(behind, to) - sequence.enters(from, behind + 1);
		if (Math.max(straight, round) <= GAIN || !sequence.mayMove(from, to, behind)) {
			return false;
		}
		boolean turn = round > straight;
		if (turn && !sequence.mayTurn(from, to)) {
			if (straight <= GAIN) {
				return false;
			}
			turn = false;
		}
		shift(from, to, behind, turn);
		length -= turn ? round : straight;
		return true;
	}

	/** By turning stretches, so that going back is the same. */
	private void shift(int from, int to, int behind, boolean turn) {
		int many = to - from + 1;
		int first;
		if (behind > to) {
			sequence.reverse(from, behind);
			first = behind - many + 1;
			sequence.reverse(from, behind - many);
		} else {
			sequence.reverse(behind + 1, to);
			first = behind + 1;
			sequence.reverse(behind + 1 + many, to);
		}
		// it lies turned by now
		if (!turn) {
			sequence.reverse(first, first + many - 1);
		}
		pushEnds(from, to);
		pushEnds(first, first + many - 1);
	}

	private void shuffle(long most, SplittableRandom random, Monitor monitor) {
		if (n < FEWEST) {
			return;
		}
		for (long i = 0; i < most; i++) {
			if (i % CHECK_EVERY == 0 && monitor.isCancelled()) {
				return;
			}
			double kept = length;
			sequence.clearLog();
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
				sequence.undo();
				length = kept;
			}
		}
		// of all the small differences
		length = sequence.measure();
	}

	/** Two stretches side by side change places: from a to before b, and from b to c. */
	private boolean bridge(int a, int b, int c) {
		for (int i = a; i < b; i++) {
			int after = stops.after[sequence.order[i]];
			if (after >= 0 && sequence.place[after] >= b && sequence.place[after] <= c) {
				return false;
			}
		}
		double before = sequence.gap(a) + sequence.gap(b) + sequence.gap(c + 1);
		sequence.reverse(a, c);
		int middle = a + c - b;
		sequence.reverse(a, middle);
		sequence.reverse(middle + 1, c);
		length += sequence.gap(a) + sequence.gap(middle + 1) + sequence.gap(c + 1) - before;
		pushEnds(a, middle);
		pushEnds(middle + 1, c);
		return true;
	}
}
