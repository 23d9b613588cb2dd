package org.frisket.geometry.fit;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/**
 * Covers a chain that is one smooth run with as few cubics as will do: each reaches as far as the tolerance allows, and
 * then the nodes are spread so that all share the error.
 * <p>
 * The error of a fitted cubic grows with about the fifth power of its length, which tells from one trial how far the
 * next should reach.
 */
final class RunFitter {

	private static final double GROWTH_POWER = 5;
	private static final double CLOSE_ENOUGH = 0.06;
	private static final int TRIALS = 12;

	private final Chain chain;
	private final double tolerance;
	private final CubicFit fit;

	RunFitter(Chain chain, double tolerance) {
		this.chain = chain;
		this.tolerance = tolerance;
		fit = new CubicFit(chain, tolerance);
	}

	/** A cubic, the point indices it reaches between, and the fraction of the tolerance it uses. */
	private record Stretch(int from, int to, Segment segment, double use) {
	}

	/**
	 * @param startTangent direction of travel at the start, null if free
	 * @param endTangent direction of travel at the end, null if free
	 */
	List<Segment> fit(Point startTangent, Point endTangent) {
		List<Stretch> stretches = reachFarthest(0, chain.last(), startTangent, endTangent);
		if (stretches.size() > 1) {
			List<Stretch> even = spreadEvenly(stretches, startTangent, endTangent);
			if (even != null) {
				stretches = even;
			}
		}
		return stretches.stream().map(Stretch::segment).toList();
	}

	private List<Stretch> reachFarthest(int from, int to, Point startTangent, Point endTangent) {
		List<Stretch> stretches = new ArrayList<>();
		Point tangent = startTangent;
		int at = from;
		double expected = Double.POSITIVE_INFINITY;
		while (at < to) {
			Stretch stretch = farthest(at, from, to, tangent, endTangent, expected);
			stretches.add(stretch);
			expected = 1.3 * chain.length(at, stretch.to);
			at = stretch.to;
			tangent = chain.tangent(at, from, to);
		}
		return stretches;
	}

	private Stretch farthest(int at, int from, int to, Point tangent, Point endTangent, double expected) {
		int trial = chain.length(at, to) <= expected ? to : chain.indexAfter(at, to, expected);
		int tooFar = to + 1;
		Stretch best = null;
		for (int i = 0; i < TRIALS && trial < tooFar; i++) {
			double error = fit.fit(at, trial, tangent, trial == to ? endTangent : chain.tangent(trial, from, to));
			double length = chain.length(at, trial);
			double factor = Math.pow(tolerance / Math.max(error, 1e-3 * tolerance), 1 / GROWTH_POWER);
			if (error <= tolerance) {
				best = new Stretch(at, trial, fit.cubic(), error / tolerance);
				if (trial == to) {
					break;
				}
				factor = Math.min(2.5, Math.max(1 + CLOSE_ENOUGH / 2, 0.98 * factor));
			} else {
				tooFar = trial;
				factor = Math.max(0.35, Math.min(1 - CLOSE_ENOUGH / 2, 0.98 * factor));
			}
			int reached = best == null ? at : best.to;
			if (tooFar - reached < 2
					|| tooFar <= to && chain.length(reached, tooFar) < CLOSE_ENOUGH * chain.length(at, reached)) {
				break;
			}
			trial = factor * length >= chain.length(at, to) ? to : chain.indexAfter(at, to, factor * length);
			if (trial <= reached || trial >= tooFar) {
				trial = (reached + Math.min(tooFar, to)) >>> 1;
			}
		}
		return best != null ? best
				: new Stretch(at, at + 1, new Line(chain.point(at), chain.point(at + 1)), 1);
	}

	/** The same number of cubics with the nodes moved so that each uses about the same share; null if one fails. */
	private List<Stretch> spreadEvenly(List<Stretch> stretches, Point startTangent, Point endTangent) {
		int from = stretches.get(0).from;
		int to = stretches.get(stretches.size() - 1).to;
		double[] effort = new double[stretches.size()];
		double total = 0;
		for (int i = 0; i < effort.length; i++) {
			effort[i] = Math.max(0.1, Math.pow(stretches.get(i).use, 1 / GROWTH_POWER));
			total += effort[i];
		}
		List<Stretch> even = new ArrayList<>();
		Point tangent = startTangent;
		int at = from;
		int source = 0;
		double spent = 0;
		for (int i = 1; i <= effort.length; i++) {
			double share = total * i / effort.length;
			while (source < effort.length - 1 && spent + effort[source] < share) {
				spent += effort[source++];
			}
			Stretch within = stretches.get(source);
			double length = chain.length(from, within.from)
					+ (share - spent) / effort[source] * chain.length(within.from, within.to) - chain.length(from, at);
			int end = i == effort.length ? to : chain.indexAfter(at, to, length);
			Point arriving = end == to ? endTangent : chain.tangent(end, from, to);
			double error = end > at ? fit.fit(at, end, tangent, arriving) : Double.POSITIVE_INFINITY;
			if (error > tolerance) {
				return null;
			}
			even.add(new Stretch(at, end, fit.cubic(), error / tolerance));
			at = end;
			tangent = arriving;
		}
		return at == to ? even : null;
	}
}
