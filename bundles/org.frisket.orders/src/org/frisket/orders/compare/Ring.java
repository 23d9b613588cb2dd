package org.frisket.orders.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What leads back to itself, or lies within itself. */
final class Ring {

	private Ring() {
	}

	/** Keys of all nodes that lead to themselves. */
	static Set<String> of(Map<String, Node> nodes) {
		Set<String> ring = new HashSet<>();
		for (Node node : nodes.values()) {
			if (leads(node, node.key(), nodes)) {
				ring.add(node.key());
			}
		}
		return ring;
	}

	private static boolean leads(Node from, String to, Map<String, Node> nodes) {
		Set<String> seen = new HashSet<>();
		List<Node> next = new ArrayList<>(List.of(from));
		while (!next.isEmpty()) {
			for (String key : ties(next.remove(next.size() - 1))) {
				if (key.equals(to)) {
					return true;
				}
				if (seen.add(key) && nodes.containsKey(key)) {
					next.add(nodes.get(key));
				}
			}
		}
		return false;
	}

	private static List<String> ties(Node node) {
		List<String> ties = new ArrayList<>();
		if (node.place() != null) {
			ties.add(node.place().owner());
		}
		node.values().values().forEach(value -> {
			if (value instanceof Links links) {
				ties.addAll(links.keys());
			}
		});
		return ties;
	}
}
