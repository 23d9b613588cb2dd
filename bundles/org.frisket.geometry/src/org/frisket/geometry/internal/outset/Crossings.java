package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Monitor;

/** Finds where rims cross: by boxes, by chords, and at last on the curves. */
final class Crossings {

	private static final int MONITOR_STEP = 32;

	/** What two chords may turn away from their curves together, of the angle between them, for one crossing at most. */
	private static final double SINGLE = 0.75;
	private static final int DEEPEST = 14;
	/** Looks at the chords of two rims, some ms together; rims that coincide would go on for ever. */
	private static final int MOST_LOOKS = 30_000;

	private static final int STEPS = 12;
	/** In mm. */
	private static final double SETTLED = 1e-11;
	private static final double SAME = 1e-7;
	/** Parameters past an end that rounding may account for. */
	private static final double SLACK = 1e-9;

	private final Rim[] rims;
	/** Rims of the same group do not cross each other. */
	private final int[] group;
	/** The rim after each along its contour, and how it goes on there. */
	private final int[] next;
	private final Joint[] joint;
	private final List<Crossing> found = new ArrayList<>();
	private final double[] onA = new double[4];
	private final double[] onB = new double[4];
	private int looks;
	private int pairStart;

	/** @param group null if any two rims may cross */
	Crossings(Rim[] rims, int[] group, int[] next, Joint[] joint) {
		this.rims = rims;
		this.group = group;
		this.next = next;
		this.joint = joint;
	}

	List<Crossing> find(Monitor monitor) throws Unclear {
		Integer[] order = new Integer[rims.length];
		for (int i = 0; i < order.length; i++) {
			order[i] = i;
		}
		Arrays.sort(order, Comparator.comparingDouble(i -> rims[i].chords().minX()));
		int[] open = new int[rims.length];
		int openCount = 0;
		for (int i = 0; i < order.length; i++) {
			if (i % MONITOR_STEP == 0) {
				monitor.check();
			}
			int rim = order[i];
			Rim.Chords chords = rims[rim].chords();
			int kept = 0;
			for (int k = 0; k < openCount; k++) {
				Rim.Chords other = rims[open[k]].chords();
				if (other.maxX() < chords.minX()) {
					continue;
				}
				if (other.minY() <= chords.maxY() && chords.minY() <= other.maxY()
						&& (group == null || group[rim] != group[open[k]])) {
					compare(open[k], rim);
				}
				open[kept++] = open[k];
			}
			open[kept++] = rim;
			openCount = kept;
		}
		return found;
	}

	private void compare(int one, int other) throws Unclear {
		pairStart = found.size();
		looks = MOST_LOOKS;
		Rim.Chords a = rims[one].chords();
		Rim.Chords b = rims[other].chords();
		boolean skipForward = next[one] == other && passesJoint(one, other);
		boolean skipBack = next[other] == one && passesJoint(other, one);
		for (int i = 0; i + 1 < a.x().length; i++) {
			double sag = a.sag()[i];
			double lowX = Math.min(a.x()[i], a.x()[i + 1]) - sag;
			double highX = Math.max(a.x()[i], a.x()[i + 1]) + sag;
			double lowY = Math.min(a.y()[i], a.y()[i + 1]) - sag;
			double highY = Math.max(a.y()[i], a.y()[i + 1]) + sag;
			if (lowX > b.maxX() || highX < b.minX() || lowY > b.maxY() || highY < b.minY()) {
				continue;
			}
			for (int k = 0; k + 1 < b.x().length; k++) {
				double near = b.sag()[k];
				double bx0 = b.x()[k];
				double bx1 = b.x()[k + 1];
				double by0 = b.y()[k];
				double by1 = b.y()[k + 1];
				boolean known = skipForward && i == a.x().length - 2 && k == 0
						|| skipBack && i == 0 && k == b.x().length - 2;
				if (known || Math.max(bx0, bx1) + near < lowX || Math.min(bx0, bx1) - near > highX
						|| Math.max(by0, by1) + near < lowY || Math.min(by0, by1) - near > highY) {
					continue;
				}
				look(one, a.t()[i], a.t()[i + 1], a.x()[i], a.y()[i], a.x()[i + 1], a.y()[i + 1], sag, other, b.t()[k],
						b.t()[k + 1], bx0, by0, bx1, by1, near, 0);
			}
		}
	}

	/** Whether all that the last chord of one has to do with the first of the other is known from their joint. */
	private boolean passesJoint(int before, int after) {
		if (joint[before] != Joint.OPEN) {
			return true;
		}
		return settle(before, rims[before].to, after, rims[after].from);
	}

	/** Two stretches of curve near their chords. */
	private void look(int a, double a0, double a1, double ax0, double ay0, double ax1, double ay1, double sagA, int b,
			double b0, double b1, double bx0, double by0, double bx1, double by1, double sagB, int depth) throws Unclear {
		if (--looks < 0) {
			throw new Unclear();
		}
		double near = sagA + sagB;
		if (apart(ax0, ax1, bx0, bx1, near) || apart(ay0, ay1, by0, by1, near)) {
			return;
		}
		double ax = ax1 - ax0;
		double ay = ay1 - ay0;
		double bx = bx1 - bx0;
		double by = by1 - by0;
		double lengthA = Math.sqrt(ax * ax + ay * ay);
		double lengthB = Math.sqrt(bx * bx + by * by);
		double startB = ax * (by0 - ay0) - ay * (bx0 - ax0);
		double endB = ax * (by1 - ay0) - ay * (bx1 - ax0);
		if (startB > near * lengthA && endB > near * lengthA || startB < -near * lengthA && endB < -near * lengthA) {
			return;
		}
		double startA = bx * (ay0 - by0) - by * (ax0 - bx0);
		double endA = bx * (ay1 - by0) - by * (ax1 - bx0);
		if (startA > near * lengthB && endA > near * lengthB || startA < -near * lengthB && endA < -near * lengthB) {
			return;
		}
		double sine = ax * by - ay * bx;
		boolean single = Math.abs(sine) >= SINGLE * 8 * (sagA * lengthB + sagB * lengthA);
		if (single && sine != 0) {
			double shareA = Math.max(0, Math.min(1, startA / (startA - endA)));
			double shareB = Math.max(0, Math.min(1, startB / (startB - endB)));
			if (settle(a, a0 + shareA * (a1 - a0), b, b0 + shareB * (b1 - b0)) || near == 0) {
				return;
			}
		}
		if (depth == DEEPEST) {
			return;
		}
		double middleA = (a0 + a1) / 2;
		double middleB = (b0 + b1) / 2;
		rims[a].at(middleA, onA);
		double amx = onA[0];
		double amy = onA[1];
		rims[b].at(middleB, onB);
		double bmx = onB[0];
		double bmy = onB[1];
		double halfA = Math.max(sagA / 4, Rim.sag(ax0, ay0, ax1, ay1, amx, amy) / 2);
		double halfB = Math.max(sagB / 4, Rim.sag(bx0, by0, bx1, by1, bmx, bmy) / 2);
		look(a, a0, middleA, ax0, ay0, amx, amy, halfA, b, b0, middleB, bx0, by0, bmx, bmy, halfB, depth + 1);
		look(a, a0, middleA, ax0, ay0, amx, amy, halfA, b, middleB, b1, bmx, bmy, bx1, by1, halfB, depth + 1);
		look(a, middleA, a1, amx, amy, ax1, ay1, halfA, b, b0, middleB, bx0, by0, bmx, bmy, halfB, depth + 1);
		look(a, middleA, a1, amx, amy, ax1, ay1, halfA, b, middleB, b1, bmx, bmy, bx1, by1, halfB, depth + 1);
	}

	private static boolean apart(double a0, double a1, double b0, double b1, double near) {
		return Math.max(a0, a1) + near < Math.min(b0, b1) || Math.max(b0, b1) + near < Math.min(a0, a1);
	}

	/** Goes by Newton's method to a crossing near a guess, and notes it unless it is known. */
	private boolean settle(int a, double guessA, int b, double guessB) {
		Rim first = rims[a];
		Rim second = rims[b];
		double reachA = first.to - first.from;
		double reachB = second.to - second.from;
		double ta = guessA;
		double tb = guessB;
		for (int step = 0; step < STEPS; step++) {
			first.at(ta, onA);
			second.at(tb, onB);
			double gapX = onB[0] - onA[0];
			double gapY = onB[1] - onA[1];
			double det = onA[2] * onB[3] - onA[3] * onB[2];
			if (gapX * gapX + gapY * gapY < SETTLED * SETTLED) {
				return note(a, ta, b, tb, det);
			}
			ta += (gapX * onB[3] - gapY * onB[2]) / det;
			tb += (gapX * onA[3] - gapY * onA[2]) / det;
			if (!(Math.abs(ta - guessA) < reachA && Math.abs(tb - guessB) < reachB)) {
				return false;
			}
		}
		return false;
	}

	/** Whether the crossing lies on both rims. */
	private boolean note(int a, double ta, int b, double tb, double det) {
		Rim first = rims[a];
		Rim second = rims[b];
		double placeA = Math.min(first.to, Math.max(first.from, ta));
		double placeB = Math.min(second.to, Math.max(second.from, tb));
		if (Math.abs(ta - placeA) > SLACK || Math.abs(tb - placeB) > SLACK) {
			return false;
		}
		double x = onA[0];
		double y = onA[1];
		for (int i = pairStart; i < found.size(); i++) {
			if (Math.abs(found.get(i).x() - x) < SAME && Math.abs(found.get(i).y() - y) < SAME) {
				return true;
			}
		}
		found.add(det > 0 ? new Crossing(a, placeA, b, placeB, x, y) : new Crossing(b, placeB, a, placeA, x, y));
		return true;
	}
}
