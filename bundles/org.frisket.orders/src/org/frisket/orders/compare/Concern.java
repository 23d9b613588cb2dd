package org.frisket.orders.compare;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** What one side has worked on, so that it may not go without a word because the other side has removed it. */
final class Concern {

	private final Snapshot base;
	private final Snapshot now;
	private final Set<String> keys = new HashSet<>();

	Concern(Snapshot base, Snapshot now) {
		this.base = base;
		this.now = now;
		now.nodes().values().forEach(this::look);
	}

	/** Whether it, or something within it, was changed or added, or something new leads to it. */
	boolean has(String key) {
		return keys.contains(key);
	}

	private void look(Node node) {
		Node before = base.nodes().get(node.key());
		if (before == null || isChanged(before, node)) {
			addWithOwners(node);
		}
		node.values().forEach((name, value) -> {
			if (value instanceof Links links) {
				List<String> known = before != null && before.values().get(name) instanceof Links old ? old.keys()
						: List.of();
				links.keys().stream().filter(each -> !known.contains(each)).forEach(keys::add);
			}
		});
	}

	private boolean isChanged(Node before, Node node) {
		for (Map.Entry<String, Object> each : node.values().entrySet()) {
			Object was = before.values().get(each.getKey());
			if (each.getValue() instanceof Links links && was instanceof Links old) {
				// to lose what is gone is no work on it
				if (!links.keys().equals(old.keys().stream().filter(now.nodes()::containsKey).toList())) {
					return true;
				}
			} else if (!each.getKey().equals(Node.GROUP) && !Objects.equals(was, each.getValue())) {
				return true;
			}
		}
		return false;
	}

	private void addWithOwners(Node node) {
		for (Node each = node; each != null; each = each.place() == null ? null
				: now.nodes().get(each.place().owner())) {
			keys.add(each.key());
		}
		if (node.group() != null && base.node(node.key()).isEmpty()) {
			keys.add(node.group().owner());
		}
	}
}
