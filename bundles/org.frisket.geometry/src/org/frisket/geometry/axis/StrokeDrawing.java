package org.frisket.geometry.axis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.fit.CurveFitter;

/** Makes lines of the strokes of an axis: forks straightened out, ends led on, curves fitted. */
final class StrokeDrawing {

	/** Forks whose discs overlap by more than this part of the larger one are the same crossing. */
	private static final double SAME_FORK = 1.0;
	/** The most of a stroke that is cut back for a fork. */
	private static final double MOST_CUT = 0.4;
	/** Turns of a line that are kept as corners. */
	private static final double CORNER_ANGLE = Math.toRadians(25);

	/** One end of one of the strokes. */
	private record Side(int stroke, boolean atTo) {

		Side opposite() {
			return new Side(stroke, !atTo);
		}
	}

	/** What comes after an end. */
	private record Onward(List<Point> way, Side next) {
	}

	private final List<Stroke> strokes = new ArrayList<>();
	private final Map<Side, Onward> onward = new HashMap<>();

	StrokeDrawing(List<Stroke> axis, StrokeEnds ends) {
		Crossings crossings = Crossings.of(axis, SAME_FORK);
		for (Stroke stroke : axis) {
			if (!crossings.isWithin(stroke)) {
				strokes.add(cut(stroke.smoothed(), crossings));
			}
		}
		Map<Integer, List<Fork.End>> atCrossing = new TreeMap<>();
		for (int i = 0; i < strokes.size(); i++) {
			for (boolean atTo : new boolean[] { false, true }) {
				Stroke towards = atTo ? strokes.get(i) : strokes.get(i).reversed();
				AxisPoint end = towards.last();
				Point direction = towards.direction(end.radius());
				int node = towards.to();
				if (crossings.isCrossing(node)) {
					atCrossing.computeIfAbsent(crossings.of(node), c -> new ArrayList<>())
							.add(new Fork.End(i, atTo, end.place(), direction));
				} else if (towards.from() != towards.to()) {
					onward.put(new Side(i, atTo),
							new Onward(List.of(ends.beyond(end.place(), direction, end.radius())), null));
				}
			}
		}
		atCrossing.forEach((crossing, meeting) -> lead(
				new Fork(crossings.centre(crossing), crossings.radius(crossing), meeting)));
	}

	private static Stroke cut(Stroke stroke, Crossings crossings) {
		double most = MOST_CUT * stroke.length();
		Stroke cut = crossings.isCrossing(stroke.to())
				? stroke.shortened(Math.min(most, crossings.radius(crossings.of(stroke.to()))))
				: stroke;
		return crossings.isCrossing(stroke.from())
				? cut.reversed().shortened(Math.min(most, crossings.radius(crossings.of(stroke.from())))).reversed()
				: cut;
	}

	private void lead(Fork fork) {
		for (Fork.Link link : fork.links()) {
			Side one = new Side(link.one().stroke(), link.one().atTo());
			Side other = new Side(link.other().stroke(), link.other().atTo());
			List<Point> between = link.way().subList(1, link.way().size() - 1);
			List<Point> back = new ArrayList<>(between);
			Collections.reverse(back);
			onward.put(one, new Onward(between, other));
			onward.put(other, new Onward(back, one));
		}
		for (Fork.Landing landing : fork.landings()) {
			onward.put(new Side(landing.end().stroke(), landing.end().atTo()),
					new Onward(List.of(landing.place()), null));
		}
	}

	/** All lines, open ones first. */
	List<Contour> lines(Tolerance tolerance) {
		CurveFitter fitter = new CurveFitter(tolerance, tolerance.mm() / 2, CORNER_ANGLE);
		List<Contour> lines = new ArrayList<>();
		boolean[] drawn = new boolean[strokes.size()];
		for (int i = 0; i < strokes.size(); i++) {
			for (boolean atTo : new boolean[] { false, true }) {
				Side side = new Side(i, atTo);
				if (!drawn[i] && !leadsOn(side) && !isRing(i)) {
					List<Point> points = new ArrayList<>(onward.get(side).way());
					walk(side.opposite(), points, drawn);
					lines.add(Contour.open(fitter.fitRun(withoutRepeats(points))));
				}
			}
		}
		for (int i = 0; i < strokes.size(); i++) {
			if (!drawn[i]) {
				List<Point> points = new ArrayList<>();
				walk(new Side(i, true), points, drawn);
				List<Point> ring = withoutRepeats(points);
				if (ring.size() > 1 && ring.get(0).equals(ring.get(ring.size() - 1))) {
					ring.remove(ring.size() - 1);
				}
				lines.add(fitter.fitRing(ring));
			}
		}
		return lines;
	}

	private boolean isRing(int stroke) {
		return onward.get(new Side(stroke, true)) == null;
	}

	private boolean leadsOn(Side side) {
		return onward.get(side) != null && onward.get(side).next() != null;
	}

	/** Along the stroke to this end of it, and on from there. */
	private void walk(Side first, List<Point> points, boolean[] drawn) {
		Side side = first;
		while (side != null && !drawn[side.stroke()]) {
			drawn[side.stroke()] = true;
			Stroke stroke = strokes.get(side.stroke());
			(side.atTo() ? stroke : stroke.reversed()).points().forEach(point -> points.add(point.place()));
			Onward on = onward.get(side);
			if (on == null) {
				return;
			}
			points.addAll(on.way());
			side = on.next() == null ? null : on.next().opposite();
		}
	}

	private static List<Point> withoutRepeats(List<Point> points) {
		List<Point> kept = new ArrayList<>();
		for (Point point : points) {
			if (kept.isEmpty() || !kept.get(kept.size() - 1).equals(point)) {
				kept.add(point);
			}
		}
		return kept;
	}
}
