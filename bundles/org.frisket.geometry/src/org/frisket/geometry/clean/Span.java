package org.frisket.geometry.clean;

import java.util.List;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** A stretch of a segment that runs one way in x and one way in y, so that its ends span its box. */
final class Span extends Boxed {

	private static final int HALVINGS = 60;

	final Segment segment;
	final double from;
	final double to;
	final Point start;
	final Point end;
	/** Bound of the second derivative; a chord over a parameter step h is within this times h² / 8 of the curve. */
	final double bend;

	private Span(Segment segment, double from, double to, Point start, Point end) {
		super(start, end);
		this.segment = segment;
		this.from = from;
		this.to = to;
		this.start = start;
		this.end = end;
		bend = segment instanceof Cubic cubic
				? Math.max(cubic.secondDerivative(from).length(), cubic.secondDerivative(to).length())
				: 0;
	}

	/** Cuts a segment at its extremes. */
	static void cut(Segment segment, List<Span> spans) {
		double before = 0;
		Point start = segment.start();
		if (segment instanceof Cubic cubic) {
			for (double t : ArcCutter.extremes(cubic)) {
				Point end = cubic.at(t);
				spans.add(new Span(segment, before, t, start, end));
				before = t;
				start = end;
			}
		}
		spans.add(new Span(segment, before, 1, start, segment.end()));
	}

	/** Whether a horizontal line meets the span; of its two ends only the upper one counts. */
	boolean crosses(double y) {
		return minY <= y && y < maxY;
	}

	/** Parameter where a crossing line at height y meets the span. */
	double parameterAt(double y) {
		boolean rising = end.y() > start.y();
		double low = from;
		double high = to;
		double t = from + (to - from) * (y - start.y()) / (end.y() - start.y());
		for (int i = 0; i < HALVINGS && high - low > 1e-15; i++) {
			double error = segment.at(t).y() - y;
			if (Math.abs(error) <= 1e-12 * (1 + Math.abs(y))) {
				return t;
			}
			if (error < 0 == rising) {
				low = t;
			} else {
				high = t;
			}
			double newton = t - error / segment.derivative(t).y();
			t = newton > low && newton < high ? newton : (low + high) / 2;
		}
		return t;
	}
}
