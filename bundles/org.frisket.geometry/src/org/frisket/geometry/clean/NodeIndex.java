package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Point;

/** Finds or makes the node at a place; places within the weld distance of a node become that node. */
final class NodeIndex {

	private final double weld;
	private final double cell;
	private final List<Node> nodes = new ArrayList<>();
	private final Map<Long, List<Node>> cells = new HashMap<>();

	NodeIndex(double weld) {
		this.weld = weld;
		this.cell = 4 * weld;
	}

	double weld() {
		return weld;
	}

	/** In the order of their making, which is that of their ids. */
	List<Node> nodes() {
		return nodes;
	}

	Node at(Point point) {
		long column = (long) Math.floor(point.x() / cell);
		long row = (long) Math.floor(point.y() / cell);
		Node nearest = null;
		double least = weld;
		// only the neighbour cells that the weld distance reaches into
		long firstColumn = (long) Math.floor((point.x() - weld) / cell);
		long lastColumn = (long) Math.floor((point.x() + weld) / cell);
		long firstRow = (long) Math.floor((point.y() - weld) / cell);
		long lastRow = (long) Math.floor((point.y() + weld) / cell);
		for (long i = firstColumn; i <= lastColumn; i++) {
			for (long j = firstRow; j <= lastRow; j++) {
				for (Node node : cells.getOrDefault(key(i, j), List.of())) {
					double distance = node.point.distance(point);
					if (distance < least || distance == least && nearest == null) {
						nearest = node;
						least = distance;
					}
				}
			}
		}
		if (nearest == null) {
			nearest = new Node(nodes.size(), point);
			nodes.add(nearest);
			cells.computeIfAbsent(key(column, row), k -> new ArrayList<>(2)).add(nearest);
		}
		return nearest;
	}

	/** Cells that share a key only cost a comparison. */
	private static long key(long column, long row) {
		return column * 0x9E3779B97F4A7C15L ^ row * 0xC2B2AE3D27D4EB4FL;
	}
}
