package org.frisket.toolpath.order;

import java.util.Arrays;

import org.frisket.geometry.Point;

/** Stops in an order, each made one way round or the other. Stretches can be turned round, and all turns taken back. */
final class Sequence {

	final Stops stops;
	final int n;
	/** The stops in their order, and where each stands in it. */
	final int[] order;
	final int[] place;
	/** Which are made the other way round. */
	final boolean[] turned;
	/** What each stop has to wait for. */
	final int[][] before;
	/** Whether any has to. */
	private final boolean waiting;
	final double startX;
	final double startY;
	/** Whether the way leads on to a place after the last stop, and which. */
	final boolean ends;
	final double endX;
	final double endY;
	/** Stretches that were turned since the log was cleared. */
	private int[] log = new int[64];
	private int logged;

	/** @param end where the way leads after the last stop; null if it ends there */
	Sequence(Stops stops, Point start, Point end) {
		this.stops = stops;
		n = stops.count;
		startX = start.x();
		startY = start.y();
		ends = end != null;
		endX = ends ? end.x() : 0;
		endY = ends ? end.y() : 0;
		order = new int[n];
		place = new int[n];
		turned = new boolean[n];
		before = before(stops);
		waiting = Arrays.stream(stops.after).anyMatch(after -> after >= 0);
	}

	private static int[][] before(Stops stops) {
		int[] counts = new int[stops.count];
		for (int after : stops.after) {
			if (after >= 0) {
				counts[after]++;
			}
		}
		int[][] before = new int[stops.count][];
		for (int i = 0; i < stops.count; i++) {
			before[i] = new int[counts[i]];
		}
		for (int i = stops.count - 1; i >= 0; i--) {
			int after = stops.after[i];
			if (after >= 0) {
				before[after][--counts[after]] = i;
			}
		}
		return before;
	}

	/** Takes an order, none turned. */
	void set(int[] wanted) {
		System.arraycopy(wanted, 0, order, 0, n);
		for (int i = 0; i < n; i++) {
			place[order[i]] = i;
		}
	}

	/** Of all the way between the stops. */
	double measure() {
		double sum = 0;
		for (int i = 0; i <= n; i++) {
			sum += gap(i);
		}
		return sum;
	}

	// where a stop is entered and left, as it is made now

	private double enterX(int stop) {
		return turned[stop] ? stops.outX[stop] : stops.inX[stop];
	}

	private double enterY(int stop) {
		return turned[stop] ? stops.outY[stop] : stops.inY[stop];
	}

	double leaveX(int stop) {
		return turned[stop] ? stops.inX[stop] : stops.outX[stop];
	}

	double leaveY(int stop) {
		return turned[stop] ? stops.inY[stop] : stops.outY[stop];
	}

	/** The way to the stop at a place from the one before; at n the way on to the end. */
	double gap(int at) {
		return between(at - 1, at);
	}

	/** From where the stop at one place is left to where that at another is entered. */
	double between(int from, int to) {
		if (to == n) {
			return ends && n > 0 ? way(from < 0 ? startX : leaveX(order[from]), from < 0 ? startY : leaveY(order[from]),
					endX, endY) : 0;
		}
		return way(from < 0 ? startX : leaveX(order[from]), from < 0 ? startY : leaveY(order[from]), enterX(order[to]),
				enterY(order[to]));
	}

	/** Between where two are left: after a stretch is turned. */
	double leaves(int from, int to) {
		return way(from < 0 ? startX : leaveX(order[from]), from < 0 ? startY : leaveY(order[from]), leaveX(order[to]),
				leaveY(order[to]));
	}

	/** Between where two are entered. */
	double enters(int from, int to) {
		if (to == n) {
			return ends ? way(enterX(order[from]), enterY(order[from]), endX, endY) : 0;
		}
		return way(enterX(order[from]), enterY(order[from]), enterX(order[to]), enterY(order[to]));
	}

	static double way(double ax, double ay, double bx, double by) {
		double dx = ax - bx;
		double dy = ay - by;
		return Math.sqrt(dx * dx + dy * dy);
	}

	/** Whether a stretch may be made from its end to its start: nothing in it has to wait for another. */
	boolean mayTurn(int from, int to) {
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

	/** Whether a stretch may come behind a place elsewhere. */
	boolean mayMove(int from, int to, int behind) {
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

	/** Turns a stretch round. */
	void reverse(int from, int to) {
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

	/** From here on turns can be taken back. */
	void clearLog() {
		logged = 0;
	}

	/** Takes back all turns since the log was cleared. */
	void undo() {
		for (int i = logged - 2; i >= 0; i -= 2) {
			int end = logged;
			reverse(log[i], log[i + 1]);
			logged = end;
		}
		logged = 0;
	}
}
