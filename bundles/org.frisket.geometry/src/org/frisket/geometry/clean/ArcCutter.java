package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;

/** Cuts sources into {@link Arc}s at their extremes, and lays arcs that coincide on top of each other. */
final class ArcCutter {

	private static final int MONITOR_STEP = 256;
	private static final double PARAMETER_END = 1e-7;

	private final NodeIndex nodes;
	private final List<Arc> arcs = new ArrayList<>();
	private final Map<Long, List<Arc>> byEnds = new HashMap<>();

	ArcCutter(NodeIndex nodes) {
		this.nodes = nodes;
	}

	List<Arc> cut(List<Source> sources, Monitor monitor) {
		Point lastPoint = null;
		Node lastNode = null;
		int seen = 0;
		for (Source source : sources) {
			if (++seen % MONITOR_STEP == 0) {
				monitor.check();
			}
			Point first = source.segment().start();
			Node start = first.equals(lastPoint) ? lastNode : nodes.at(first);
			Node end = nodes.at(source.segment().end());
			cut(source, start, end);
			lastPoint = source.segment().end();
			lastNode = end;
		}
		arcs.removeIf(a -> a.winding == 0);
		return arcs;
	}

	private void cut(Source source, Node start, Node end) {
		double before = 0;
		Node from = start;
		if (source.segment() instanceof Cubic cubic) {
			for (double t : extremes(cubic)) {
				Node to = nodes.at(cubic.at(t));
				add(new Arc(source, before, t, from, to));
				before = t;
				from = to;
			}
		}
		add(new Arc(source, before, 1, from, end));
	}

	private void add(Arc arc) {
		if (arc.start == arc.end) {
			return;
		}
		long low = Math.min(arc.start.id, arc.end.id);
		long high = Math.max(arc.start.id, arc.end.id);
		List<Arc> rivals = byEnds.computeIfAbsent(low << 32 | high, k -> new ArrayList<>(1));
		for (Arc rival : rivals) {
			if (coincide(arc, rival)) {
				rival.winding += rival.start == arc.start ? arc.winding : -arc.winding;
				return;
			}
		}
		rivals.add(arc);
		arcs.add(arc);
	}

	/** Between the same nodes, cubics with the same handles are the same curve. */
	private boolean coincide(Arc one, Arc other) {
		boolean sameWay = one.start == other.start;
		double reach = 2 * nodes.weld();
		return near(one, 1.0 / 3, other, sameWay ? 1.0 / 3 : 2.0 / 3, reach)
				&& near(one, 2.0 / 3, other, sameWay ? 2.0 / 3 : 1.0 / 3, reach);
	}

	// two cubics that agree in four points at the same parameters are equal
	private static boolean near(Arc one, double fraction, Arc other, double otherFraction, double reach) {
		Point p = one.source.segment().at(one.from + (one.to - one.from) * fraction);
		Point q = other.source.segment().at(other.from + (other.to - other.from) * otherFraction);
		return p.distance(q) <= reach;
	}

	/** Ascending parameters inside (0, 1) where the curve turns back in x or in y. */
	static double[] extremes(Cubic c) {
		double[] found = new double[4];
		int count = turns(c.start().x(), c.control1().x(), c.control2().x(), c.end().x(), found, 0);
		count = turns(c.start().y(), c.control1().y(), c.control2().y(), c.end().y(), found, count);
		Arrays.sort(found, 0, count);
		int kept = 0;
		for (int i = 0; i < count; i++) {
			if (kept == 0 || found[i] - found[kept - 1] > PARAMETER_END) {
				found[kept++] = found[i];
			}
		}
		return Arrays.copyOf(found, kept);
	}

	private static int turns(double p0, double p1, double p2, double p3, double[] found, int count) {
		// a third of the derivative: a t^2 + b t + c
		double a = p3 - 3 * p2 + 3 * p1 - p0;
		double b = 2 * (p2 - 2 * p1 + p0);
		double c = p1 - p0;
		double discriminant = b * b - 4 * a * c;
		if (!(discriminant > 0)) {
			return count;
		}
		double q = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
		int total = count;
		for (int root = 0; root < 2; root++) {
			double t = root == 0 ? q / a : c / q;
			if (t > PARAMETER_END && t < 1 - PARAMETER_END) {
				found[total++] = t;
			}
		}
		return total;
	}
}
