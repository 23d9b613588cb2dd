package org.frisket.geometry.lines;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Segment;

/**
 * Breaks lines into dashes, as for scoring and perforating. A dash lies over each corner, half of it on either side, so
 * that corners are always worked; an open line starts and ends with a whole dash. Between two corners the pattern is
 * stretched or squeezed evenly until it comes out; by how much depends on the length, but it is never squeezed to less
 * than two thirds. A stretch too short for a gap is one dash. Curves stay curves.
 *
 * @param dash length in mm, positive
 * @param gap  length in mm, positive
 */
public record Dashes(double dash, double gap) {

	/** Below this part of a dash what lies between two dashes is rounding. */
	private static final double ROUNDING = 1e-9;
	/** More than any blade makes in a line; beyond that it stays whole. */
	private static final int MOST = 100_000;

	/** @throws IllegalArgumentException unless both lengths are positive and finite */
	public Dashes {
		if (!(dash > 0 && gap > 0) || !Double.isFinite(dash + gap)) {
			throw new IllegalArgumentException("dashes of " + dash + " mm with gaps of " + gap);
		}
	}

	private record Stretch(double from, double to) {
	}

	/** The dashes of several lines, one after the other. */
	public List<Contour> of(List<Contour> lines) {
		return lines.stream().flatMap(line -> of(line).stream()).toList();
	}

	/** The dashes along a line from its start, each of them open; the line itself if there is no room for a gap. */
	public List<Contour> of(Contour line) {
		if (line.segments().stream().noneMatch(segment -> segment.length() > 0)) {
			return List.of(line);
		}
		ArcLength curve = new ArcLength(line);
		if (!(curve.length() / (dash + gap) < MOST)) {
			return List.of(line);
		}
		List<Stretch> dashes = new ArrayList<>();
		List<Double> corners = corners(curve);
		for (int i = 0; i + 1 < corners.size(); i++) {
			boolean opens = !curve.isClosed() && i == 0;
			boolean ends = !curve.isClosed() && i + 2 == corners.size();
			add(corners.get(i), corners.get(i + 1), opens, ends, dashes);
		}
		if (curve.isClosed()) {
			joinRound(curve.length(), dashes);
		}
		return dashes.size() == 1 && dashes.get(0).to - dashes.get(0).from >= curve.length() * (1 - ROUNDING)
				? List.of(line)
				: dashes.stream().map(each -> curve.stretch(each.from, each.to)).toList();
	}

	/**
	 * Where the pattern is fixed: at corners and at the ends. A closed line without any corner is fixed at its start; one
	 * with corners at these only, of which the last is the first again, once round.
	 */
	private static List<Double> corners(ArcLength curve) {
		List<Segment> segments = curve.segments();
		double[] joints = curve.joints();
		List<Double> corners = new ArrayList<>();
		for (int i = 0; i < segments.size(); i++) {
			Segment before = segments.get(i == 0 ? segments.size() - 1 : i - 1);
			if (i == 0 && !curve.isClosed() || (i > 0 || curve.isClosed()) && Bend.isCorner(before, segments.get(i))) {
				corners.add(joints[i]);
			}
		}
		if (corners.isEmpty()) {
			corners.add(0.0);
		}
		corners.add(curve.isClosed() ? corners.get(0) + curve.length() : curve.length());
		return corners;
	}

	private void add(double from, double to, boolean opens, boolean ends, List<Stretch> dashes) {
		double head = opens ? dash : dash / 2;
		double tail = ends ? dash : dash / 2;
		double more = to - from - (head + gap + tail);
		int between = (int) Math.max(0, Math.rint(more / (dash + gap)));
		double units = head + gap + tail + between * (dash + gap);
		double stretch = (to - from) / units;
		if (stretch < 2.0 / 3) {
			addOrJoin(from, to, dashes);
			return;
		}
		double at = from + head * stretch;
		addOrJoin(from, at, dashes);
		for (int i = 0; i < between; i++) {
			at += gap * stretch;
			addOrJoin(at, at + dash * stretch, dashes);
			at += dash * stretch;
		}
		addOrJoin(to - tail * stretch, to, dashes);
	}

	/** Two halves that meet at a corner are one dash. */
	private void addOrJoin(double from, double to, List<Stretch> dashes) {
		int last = dashes.size() - 1;
		if (last >= 0 && from - dashes.get(last).to <= ROUNDING * dash) {
			dashes.set(last, new Stretch(dashes.get(last).from, to));
		} else {
			dashes.add(new Stretch(from, to));
		}
	}

	/** The first half dash of a closed line belongs to the last one; what lies beyond once round is brought back. */
	private void joinRound(double length, List<Stretch> dashes) {
		Stretch first = dashes.get(0);
		Stretch last = dashes.get(dashes.size() - 1);
		if (dashes.size() > 1) {
			dashes.remove(0);
			dashes.set(dashes.size() - 1, new Stretch(last.from, first.to + length));
		}
		dashes.replaceAll(each -> each.from >= length ? new Stretch(each.from - length, each.to - length) : each);
	}
}
