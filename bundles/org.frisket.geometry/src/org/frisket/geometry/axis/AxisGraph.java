package org.frisket.geometry.axis;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** A medial axis as nodes and edges while it is made. */
final class AxisGraph {

	/**
	 * @param objectAngle under which the two places of the boundary that are nearest are seen from the edge, in
	 *            radians: small where the axis only reaches for a bump
	 */
	record Edge(int a, int b, double objectAngle) {

		int other(int node) {
			return node == a ? b : a;
		}
	}

	private final List<AxisPoint> nodes = new ArrayList<>();
	private final List<List<Edge>> edges = new ArrayList<>();

	int add(AxisPoint node) {
		nodes.add(node);
		edges.add(new ArrayList<>(3));
		return nodes.size() - 1;
	}

	AxisPoint node(int node) {
		return nodes.get(node);
	}

	void connect(int a, int b, double objectAngle) {
		Edge edge = new Edge(a, b, objectAngle);
		edges.get(a).add(edge);
		edges.get(b).add(edge);
	}

	/** Takes away what hangs loose and is seen under less than an angle, from its ends inwards; no ring opens. */
	void burn(double angle) {
		Deque<Integer> ends = new ArrayDeque<>();
		for (int node = 0; node < nodes.size(); node++) {
			ends.add(node);
		}
		while (!ends.isEmpty()) {
			int node = ends.poll();
			if (edges.get(node).size() == 1 && edges.get(node).get(0).objectAngle() < angle) {
				Edge edge = edges.get(node).remove(0);
				edges.get(edge.other(node)).remove(edge);
				ends.add(edge.other(node));
			}
		}
	}

	private boolean isPassing(int node) {
		return edges.get(node).size() == 2;
	}

	/** The stretches between ends and forks, in the order of the nodes. */
	List<Stroke> strokes() {
		List<Stroke> strokes = new ArrayList<>();
		boolean[] passed = new boolean[nodes.size()];
		for (int node = 0; node < nodes.size(); node++) {
			if (!edges.get(node).isEmpty() && !isPassing(node)) {
				for (Edge edge : edges.get(node)) {
					follow(node, edge, passed, strokes);
				}
			}
		}
		for (int node = 0; node < nodes.size(); node++) {
			if (isPassing(node) && !passed[node]) {
				follow(node, edges.get(node).get(0), passed, strokes);
			}
		}
		return strokes;
	}

	private void follow(int from, Edge first, boolean[] passed, List<Stroke> strokes) {
		List<AxisPoint> points = new ArrayList<>();
		points.add(nodes.get(from));
		Edge edge = first;
		int node = edge.other(from);
		while (isPassing(node) && node != from) {
			if (passed[node]) {
				return;
			}
			passed[node] = true;
			points.add(nodes.get(node));
			edge = edges.get(node).get(edges.get(node).get(0) == edge ? 1 : 0);
			node = edge.other(node);
		}
		boolean direct = points.size() == 1;
		// the same stretch is come upon from its other end; one without nodes between is told by which end is first
		if (direct && node < from) {
			return;
		}
		passed[from] |= isPassing(from);
		points.add(nodes.get(node));
		strokes.add(new Stroke(from, node, points));
	}
}
