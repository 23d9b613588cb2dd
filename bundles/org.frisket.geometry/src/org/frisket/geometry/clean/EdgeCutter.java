package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;

/** Cuts noded arcs into {@link Edge}s and lays edges that coincide on top of each other. */
final class EdgeCutter {

	private static final int MONITOR_STEP = 32;

	private final double weld;
	private final double deviation;
	private final List<Edge> edges = new ArrayList<>();
	private final Map<Long, List<Edge>> byEnds = new HashMap<>();

	EdgeCutter(double weld, double deviation) {
		this.weld = weld;
		this.deviation = deviation;
	}

	/** Edges that wind nothing are left out. */
	List<Edge> cut(List<Arc> arcs, Monitor monitor) {
		int seen = 0;
		for (Arc arc : arcs) {
			if (++seen % MONITOR_STEP == 0) {
				monitor.check();
			}
			if (arc.meetings == null) {
				add(new Edge(arc, arc.from, arc.to, arc.start, arc.end, deviation), false);
			} else {
				cut(arc);
			}
		}
		edges.removeIf(e -> e.winding == 0);
		return edges;
	}

	private void cut(Arc arc) {
		arc.meetings.sort(Comparator.comparingDouble(Arc.Meeting::t));
		double from = arc.from;
		Node start = arc.start;
		for (Arc.Meeting meeting : arc.meetings) {
			add(new Edge(arc, from, meeting.t(), start, meeting.node(), deviation), true);
			from = meeting.t();
			start = meeting.node();
		}
		add(new Edge(arc, from, arc.to, start, arc.end, deviation), true);
	}

	private void add(Edge edge, boolean cut) {
		if (edge.start == edge.end) {
			return;
		}
		long low = Math.min(edge.start.id, edge.end.id);
		long high = Math.max(edge.start.id, edge.end.id);
		List<Edge> rivals = byEnds.computeIfAbsent(low << 32 | high, k -> new ArrayList<>(1));
		if (cut) {
			edge.trim(weld);
		}
		for (Edge rival : rivals) {
			if (coincide(edge, rival)) {
				boolean sameWay = rival.start == edge.start;
				rival.winding += sameWay ? edge.winding : -edge.winding;
				rival.strands.add(sameWay ? edge.strands.get(0) : edge.strands.get(0).reversed());
				return;
			}
		}
		rivals.add(edge);
		edges.add(edge);
	}

	private boolean coincide(Edge one, Edge other) {
		if (straight(one) && straight(other)) {
			return true;
		}
		boolean sameWay = one.start == other.start;
		Strand a = one.strands.get(0);
		Strand b = other.strands.get(0);
		double reach = 2 * weld;
		return a.at(1.0 / 3).distance(b.at(sameWay ? 1.0 / 3 : 2.0 / 3)) <= reach
				&& a.at(2.0 / 3).distance(b.at(sameWay ? 2.0 / 3 : 1.0 / 3)) <= reach;
	}

	private static boolean straight(Edge edge) {
		return edge.strands.get(0).source().segment() instanceof Line || edge.corners() == 2;
	}
}
