package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/**
 * Compares a result with its sources along horizontal lines, straight on the curves and by other means than those that
 * made the result: the inside must be the same but for strips as wide as the tolerance.
 */
final class ScanlineCheck {

	private static final int LINES = 24;
	/** Places a line a little off the middle of a contour, where drawings like to have their nodes. */
	private static final double OFF_CENTRE = 0.4871;

	private final List<Placed> sources = new ArrayList<>();
	private final List<Placed> results = new ArrayList<>();
	private final IntPredicate inside;
	private final double tolerance;
	private final double[] heights;

	private record Placed(Span span, int winding, boolean source) {
	}

	private record Crossing(double x, double slope, Placed placed) {
	}

	ScanlineCheck(List<Source> sources, List<Contour> result, IntPredicate inside, double tolerance) {
		this.inside = inside;
		this.tolerance = tolerance;
		for (Source source : sources) {
			place(source.segment(), source.winding(), true, this.sources);
		}
		for (Contour contour : result) {
			for (Segment segment : contour.segments()) {
				place(segment, 1, false, results);
			}
		}
		heights = heights(sources, result);
	}

	private static void place(Segment segment, int winding, boolean source, List<Placed> placed) {
		List<Span> spans = new ArrayList<>(3);
		Span.cut(segment, spans);
		spans.forEach(s -> placed.add(new Placed(s, winding, source)));
	}

	/** Through the middle of as many contours as there are lines, those of the input and of the result. */
	private static double[] heights(List<Source> sources, List<Contour> result) {
		List<Bounds> boxes = new ArrayList<>();
		int contour = -1;
		for (Source source : sources) {
			Bounds box = source.segment().bounds();
			if (source.contour() == contour) {
				int last = boxes.size() - 1;
				boxes.set(last, boxes.get(last).with(box));
			} else {
				boxes.add(box);
			}
			contour = source.contour();
		}
		result.forEach(c -> boxes.add(c.bounds()));
		int count = Math.min(LINES, boxes.size());
		double[] heights = new double[count];
		for (int i = 0; i < count; i++) {
			Bounds box = boxes.get((int) ((long) i * boxes.size() / count));
			heights[i] = box.minY() + OFF_CENTRE * box.height();
		}
		return heights;
	}

	boolean agrees(Monitor monitor) {
		for (double height : heights) {
			monitor.check();
			if (!agrees(height)) {
				return false;
			}
		}
		return true;
	}

	private boolean agrees(double y) {
		List<Crossing> crossings = new ArrayList<>();
		collect(sources, y, crossings);
		collect(results, y, crossings);
		crossings.sort(Comparator.comparingDouble(Crossing::x));
		double differing = 0;
		double allowed = 0;
		int winding = 0;
		boolean inResult = false;
		double before = 0;
		for (Crossing crossing : crossings) {
			if (inside.test(winding) != inResult) {
				differing += crossing.x() - before;
			}
			before = crossing.x();
			allowed += 2 * tolerance * (1 + crossing.slope());
			if (crossing.placed().source()) {
				Span span = crossing.placed().span();
				winding += span.end.y() > span.start.y() ? crossing.placed().winding() : -crossing.placed().winding();
			} else {
				inResult = !inResult;
			}
		}
		return differing <= allowed;
	}

	private static void collect(List<Placed> spans, double y, List<Crossing> crossings) {
		for (Placed placed : spans) {
			Span span = placed.span();
			if (span.crosses(y)) {
				double t = span.parameterAt(y);
				Point direction = span.segment.derivative(t);
				crossings.add(new Crossing(span.segment.at(t).x(), Math.abs(direction.x() / direction.y()), placed));
			}
		}
	}
}
