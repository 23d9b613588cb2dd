package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** The stretches of an outline that cleaning took away: those along which nothing of what came out runs. */
public final class RemovedStretches {

	/** Places asked for along a segment lie this many tolerances apart. */
	private static final double STEP = 10;
	private static final int FEWEST_PLACES = 4;
	private static final int MOST_PLACES = 500;
	private static final int HALVINGS = 12;

	private final Set<Segment> kept = new HashSet<>();
	private final STRtree chords = new STRtree();
	private final double reach;
	private final double step;

	private RemovedStretches(Outline after, Tolerance tolerance) {
		// what came out may have moved by the tolerance, and its chords lie off it by a part of that
		double deviation = tolerance.mm() / 4;
		reach = tolerance.mm() + 2 * deviation;
		step = tolerance.mm() * STEP;
		for (Contour contour : after.contours()) {
			kept.addAll(contour.segments());
			List<Point> points = new ArrayList<>(contour.flattened(deviation));
			if (contour.isClosed() && !points.isEmpty()) {
				points.add(points.get(0));
			}
			for (int i = 1; i < points.size(); i++) {
				Line chord = new Line(points.get(i - 1), points.get(i));
				chords.insert(envelope(chord.start(), chord.end()), chord);
			}
		}
		chords.build();
	}

	/**
	 * Open contours, true curves cut where cleaning cut them, in the order of the outline.
	 *
	 * @param after what came out: the clean contours and what was left open
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Outline of(Outline before, Outline after, Tolerance tolerance, Monitor monitor) {
		RemovedStretches stretches = new RemovedStretches(after, tolerance);
		List<Contour> removed = new ArrayList<>();
		for (Contour contour : before.contours()) {
			monitor.check();
			stretches.addFrom(contour, removed);
		}
		return new Outline(removed);
	}

	private void addFrom(Contour contour, List<Contour> removed) {
		List<List<Segment>> chains = new ArrayList<>();
		for (Segment segment : contour.segments()) {
			if (!kept.contains(segment) && !kept.contains(segment.reversed())) {
				addFrom(segment, chains);
			}
		}
		// a stretch that runs through the start of the contour is one
		if (contour.isClosed() && chains.size() > 1) {
			List<Segment> last = chains.get(chains.size() - 1);
			if (end(last).equals(chains.get(0).get(0).start())) {
				last.addAll(chains.remove(0));
			}
		}
		chains.forEach(chain -> removed.add(Contour.open(chain)));
	}

	private void addFrom(Segment segment, List<List<Segment>> chains) {
		int places = (int) Math.max(FEWEST_PLACES, Math.min(MOST_PLACES, Math.ceil(segment.length() / step)));
		double from = Double.NaN;
		for (int i = 0; i <= places; i++) {
			boolean gone = i < places && !isKept(segment, middle(i, places));
			if (gone && Double.isNaN(from)) {
				from = i == 0 ? 0 : change(segment, middle(i - 1, places), middle(i, places));
			} else if (!gone && !Double.isNaN(from)) {
				double to = i == places ? 1 : change(segment, middle(i - 1, places), middle(i, places));
				add(from == 0 && to == 1 ? segment : segment.between(from, to), chains);
				from = Double.NaN;
			}
		}
	}

	private static double middle(int place, int places) {
		return (place + 0.5) / places;
	}

	/** Where between two parameters it changes whether the segment is kept. */
	private double change(Segment segment, double from, double to) {
		boolean before = isKept(segment, from);
		double low = from;
		double high = to;
		for (int i = 0; i < HALVINGS; i++) {
			double middle = (low + high) / 2;
			if (isKept(segment, middle) == before) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return (low + high) / 2;
	}

	private static void add(Segment stretch, List<List<Segment>> chains) {
		if (chains.isEmpty() || !end(chains.get(chains.size() - 1)).equals(stretch.start())) {
			chains.add(new ArrayList<>());
		}
		chains.get(chains.size() - 1).add(stretch);
	}

	private static Point end(List<Segment> chain) {
		return chain.get(chain.size() - 1).end();
	}

	private boolean isKept(Segment segment, double t) {
		Point point = segment.at(t);
		Envelope around = envelope(point, point);
		around.expandBy(reach);
		for (Object chord : chords.query(around)) {
			if (distance(point, (Line) chord) <= reach) {
				return true;
			}
		}
		return false;
	}

	private static double distance(Point point, Line chord) {
		Point along = chord.end().minus(chord.start());
		double square = along.dot(along);
		double t = square == 0 ? 0 : Math.max(0, Math.min(1, point.minus(chord.start()).dot(along) / square));
		return point.distance(chord.start().towards(chord.end(), t));
	}

	private static Envelope envelope(Point a, Point b) {
		return new Envelope(a.x(), b.x(), a.y(), b.y());
	}
}
