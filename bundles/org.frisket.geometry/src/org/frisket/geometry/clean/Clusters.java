package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;

/**
 * Sorts contours into groups that keep clear of each other and do not lie within each other, so that each group can be
 * treated by itself. Boxes tell; where those of whole contours meet, as those of lines of text do, those of segments.
 */
final class Clusters {

	private final List<Contour> contours;
	private final double margin;
	private final Bounds[] boxes;
	private final int[] parent;

	private Clusters(List<Contour> contours, double margin) {
		this.contours = contours;
		this.margin = margin;
		boxes = contours.stream().map(c -> c.bounds().grown(margin)).toArray(Bounds[]::new);
		parent = new int[boxes.length];
		for (int i = 0; i < parent.length; i++) {
			parent[i] = i;
		}
	}

	/** Numbers of the contours of each cluster, ascending. */
	static List<List<Integer>> of(List<Contour> contours, double margin, Monitor monitor) {
		Clusters clusters = new Clusters(contours, margin);
		clusters.sweep(monitor);
		Map<Integer, List<Integer>> groups = new LinkedHashMap<>();
		for (int i = 0; i < clusters.parent.length; i++) {
			groups.computeIfAbsent(clusters.root(i), k -> new ArrayList<>()).add(i);
		}
		return List.copyOf(groups.values());
	}

	private void sweep(Monitor monitor) {
		List<Integer> order = new ArrayList<>();
		for (int i = 0; i < boxes.length; i++) {
			order.add(i);
		}
		order.sort(Comparator.comparingDouble(i -> boxes[i].minX()));
		List<Boxed> ordered = order.stream().map(i -> boxed(boxes[i])).toList();
		new BoxSweep(ordered, 0).run(monitor, (later, earlier) -> {
			int i = order.get(later);
			int j = order.get(earlier);
			if (root(i) != root(j) && meet(i, j)) {
				parent[Math.max(root(i), root(j))] = Math.min(root(i), root(j));
			}
			return false;
		});
	}

	private static Boxed boxed(Bounds box) {
		return new Boxed(new Point(box.minX(), box.minY()), new Point(box.maxX(), box.maxY()));
	}

	private boolean meet(int i, int j) {
		if (contains(boxes[i], boxes[j]) || contains(boxes[j], boxes[i])) {
			return true;
		}
		List<Bounds> near = near(contours.get(i), boxes[j]);
		return near(contours.get(j), boxes[i]).stream().anyMatch(box -> near.stream().anyMatch(box::intersects));
	}

	/** One contour may lie within another. */
	private static boolean contains(Bounds outer, Bounds inner) {
		return outer.contains(new Point(inner.minX(), inner.minY())) && outer.contains(new Point(inner.maxX(), inner.maxY()));
	}

	/** Boxes of the segments that reach into another box. */
	private List<Bounds> near(Contour contour, Bounds other) {
		return contour.segments().stream().map(segment -> segment.bounds().grown(margin)).filter(other::intersects).toList();
	}

	private int root(int i) {
		int root = i;
		while (parent[root] != root) {
			root = parent[root];
		}
		parent[i] = root;
		return root;
	}
}
