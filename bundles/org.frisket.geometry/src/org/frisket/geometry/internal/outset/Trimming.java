package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Monitor;

/**
 * Takes away of rims what lies nearer to the shape than they should, and chains what is left.
 * <p>
 * Between two places where something happens to a contour of rims, a crossing or a gap, all of it is left or nothing.
 * Most of these stretches are known to go by what happens at their ends.
 */
final class Trimming {

	/** What happens at an end of a stretch, other than a crossing's number. */
	private static final int GAP = -1;
	private static final int NOTHING = -2;

	/** In mm: rims longer than this can be told from the way of computing errors. */
	private static final double LONG = 0.01;

	private final List<Loop> loops;
	private final List<Sources> sources;
	private final double distance;

	private final Rim[] rims;
	private final Joint[] joint;
	private final int[] next;
	private List<Crossing> crossings;
	/** Crossings on each rim in order; null for none. */
	private int[][] events;
	private final double[] place = new double[4];

	/** A stretch of a rim, and what comes between it and the next one. */
	private record Part(Rim rim, Joint joint) {
	}

	/** Of one contour, from the event on one rim to that on another. */
	private record Stretch(List<Part> parts, int startsAt, int firstRim, int endsAt, int lastRim) {
	}

	private Trimming(List<Loop> loops, List<Sources> sources, double distance) {
		this.loops = loops;
		this.sources = sources;
		this.distance = distance;
		int count = loops.stream().mapToInt(loop -> loop.rims().size()).sum();
		rims = new Rim[count];
		joint = new Joint[count];
		next = new int[count];
		int at = 0;
		for (Loop loop : loops) {
			int first = at;
			for (int i = 0; i < loop.rims().size(); i++) {
				rims[at] = loop.rims().get(i);
				joint[at] = loop.joints().get(i);
				next[at] = i + 1 < loop.rims().size() ? at + 1 : first;
				at++;
			}
		}
	}

	/**
	 * @param loops   all at the same distance from the edges of the shape
	 * @param group   a number for each loop, those with the same do not cross; null if any two may
	 * @param sources the edges
	 */
	static List<Loop> trimmed(List<Loop> loops, int[] group, List<Sources> sources, double distance, Monitor monitor)
			throws Unclear {
		return new Trimming(loops, sources, distance).trimmed(group, monitor);
	}

	private List<Loop> trimmed(int[] group, Monitor monitor) throws Unclear {
		int[] groups = null;
		if (group != null) {
			groups = new int[rims.length];
			int at = 0;
			for (int i = 0; i < group.length; i++) {
				Arrays.fill(groups, at, at + loops.get(i).rims().size(), group[i]);
				at += loops.get(i).rims().size();
			}
		}
		crossings = new Crossings(rims, groups, next, joint).find(monitor);
		sortEvents();
		List<Loop> left = new ArrayList<>();
		Stretch[] leaving = new Stretch[crossings.size()];
		Stretch[] arriving = new Stretch[crossings.size()];
		int at = 0;
		for (Loop loop : loops) {
			monitor.check();
			for (Stretch stretch : stretches(at, loop.rims().size())) {
				if (!isLeft(stretch)) {
					continue;
				}
				if (stretch.startsAt == NOTHING) {
					left.add(loop);
				} else {
					leaving[stretch.startsAt] = stretch;
					arriving[stretch.endsAt] = stretch;
				}
			}
			at += loop.rims().size();
		}
		chain(leaving, arriving, left);
		return left;
	}

	private void sortEvents() {
		int[] count = new int[rims.length];
		for (Crossing crossing : crossings) {
			count[crossing.arriving()]++;
			count[crossing.leaving()]++;
		}
		events = new int[rims.length][];
		for (int i = 0; i < crossings.size(); i++) {
			put(crossings.get(i).arriving(), i, count);
			put(crossings.get(i).leaving(), i, count);
		}
	}

	private void put(int rim, int crossing, int[] count) {
		if (events[rim] == null) {
			events[rim] = new int[count[rim]];
			count[rim] = 0;
		}
		int[] known = events[rim];
		int at = count[rim]++;
		double t = parameter(crossing, rim);
		while (at > 0 && parameter(known[at - 1], rim) > t) {
			known[at] = known[at - 1];
			at--;
		}
		known[at] = crossing;
	}

	private double parameter(int crossing, int rim) {
		Crossing found = crossings.get(crossing);
		return found.arriving() == rim ? found.arrivingAt() : found.leavingAt();
	}

	/** All round a loop, from one event to the next. */
	private List<Stretch> stretches(int first, int count) {
		List<Stretch> stretches = new ArrayList<>();
		List<Part> parts = new ArrayList<>();
		int startsAt = NOTHING;
		int firstRim = first;
		for (int i = first; i < first + count; i++) {
			double from = rims[i].from;
			for (int k = 0; events[i] != null && k < events[i].length; k++) {
				double t = parameter(events[i][k], i);
				parts.add(new Part(rims[i].between(from, t), Joint.CORNER));
				stretches.add(new Stretch(parts, startsAt, firstRim, events[i][k], i));
				parts = new ArrayList<>();
				startsAt = events[i][k];
				firstRim = i;
				from = t;
			}
			parts.add(new Part(rims[i].between(from, rims[i].to), joint[i]));
			if (joint[i] == Joint.OPEN) {
				stretches.add(new Stretch(parts, startsAt, firstRim, GAP, i));
				parts = new ArrayList<>();
				startsAt = GAP;
			}
		}
		if (stretches.isEmpty()) {
			return parts.isEmpty() ? stretches : List.of(new Stretch(parts, NOTHING, first, NOTHING, first));
		}
		Stretch start = stretches.get(0);
		parts.addAll(start.parts);
		stretches.set(0, new Stretch(parts, startsAt, firstRim, start.endsAt, start.lastRim));
		return stretches;
	}

	/**
	 * Whether a stretch is left. A gap is where a rim has gone on beyond its neighbour, in whose reach it ends; at a
	 * crossing one of the rims is left before it and the other one after it. Each of its rims has to agree.
	 */
	private boolean isLeft(Stretch stretch) throws Unclear {
		boolean left = stretch.startsAt != GAP && stretch.endsAt != GAP
				&& (stretch.startsAt == NOTHING || crossings.get(stretch.startsAt).leaving() == stretch.firstRim
						&& crossings.get(stretch.endsAt).arriving() == stretch.lastRim);
		boolean asked = false;
		for (Part part : stretch.parts) {
			Rim rim = part.rim;
			if (isLong(rim)) {
				boolean reached = isReached(rim);
				if (left && !asked) {
					left = !reached;
				} else if (left == reached) {
					throw new Unclear();
				}
				asked = true;
			}
		}
		return left && (asked || !isReached(stretch.parts.get(stretch.parts.size() / 2).rim));
	}

	private boolean isLong(Rim rim) {
		rim.at(rim.from, place);
		double x = place[0];
		double y = place[1];
		rim.at(rim.to, place);
		return Math.abs(place[0] - x) + Math.abs(place[1] - y) > LONG;
	}

	private boolean isReached(Rim rim) {
		rim.at((rim.from + rim.to) / 2, place);
		for (Sources each : sources) {
			if (each.reach(place[0], place[1], distance)) {
				return true;
			}
		}
		return false;
	}

	private static void chain(Stretch[] leaving, Stretch[] arriving, List<Loop> loops) throws Unclear {
		for (int i = 0; i < leaving.length; i++) {
			if (leaving[i] == null != (arriving[i] == null)) {
				throw new Unclear();
			}
		}
		for (int i = 0; i < leaving.length; i++) {
			List<Rim> rims = new ArrayList<>();
			List<Joint> joints = new ArrayList<>();
			int at = i;
			while (leaving[at] != null) {
				for (Part part : leaving[at].parts) {
					rims.add(part.rim);
					joints.add(part.joint);
				}
				int end = leaving[at].endsAt;
				leaving[at] = null;
				at = end;
			}
			if (!rims.isEmpty()) {
				loops.add(new Loop(rims, joints));
			}
		}
	}
}
