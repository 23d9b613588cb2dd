package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;

/** Sorts contours into groups whose boxes keep clear of each other, so that each group can be treated by itself. */
final class Clusters {

	private final Bounds[] boxes;
	private final int[] parent;

	private Clusters(List<Contour> contours, double margin) {
		boxes = contours.stream().map(c -> c.bounds().grown(margin)).toArray(Bounds[]::new);
		parent = new int[boxes.length];
		for (int i = 0; i < parent.length; i++) {
			parent[i] = i;
		}
	}

	/** Numbers of the contours of each cluster, ascending. */
	static List<List<Integer>> of(List<Contour> contours, double margin) {
		Clusters clusters = new Clusters(contours, margin);
		clusters.sweep();
		Map<Integer, List<Integer>> groups = new LinkedHashMap<>();
		for (int i = 0; i < clusters.parent.length; i++) {
			groups.computeIfAbsent(clusters.root(i), k -> new ArrayList<>()).add(i);
		}
		return List.copyOf(groups.values());
	}

	private void sweep() {
		List<Integer> order = new ArrayList<>();
		for (int i = 0; i < boxes.length; i++) {
			order.add(i);
		}
		order.sort(Comparator.comparingDouble(i -> boxes[i].minX()));
		List<Integer> open = new ArrayList<>();
		for (int i : order) {
			open.removeIf(j -> boxes[j].maxX() < boxes[i].minX());
			for (int j : open) {
				if (boxes[i].intersects(boxes[j])) {
					parent[Math.max(root(i), root(j))] = Math.min(root(i), root(j));
				}
			}
			open.add(i);
		}
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
