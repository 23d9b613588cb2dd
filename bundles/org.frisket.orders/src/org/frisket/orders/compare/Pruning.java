package org.frisket.orders.compare;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.impl.FrisketPackageImpl;

/** Takes out of a state that was put together what cannot stand there without what is missing. */
final class Pruning {

	private static final String GROUP = "Group";
	private static final String SHEET = "Sheet";
	private static final int SMALLEST_GROUP = 2;

	private final Map<String, Node> nodes;
	private final Snapshot mine;
	private final Snapshot theirs;

	Pruning(Map<String, Node> nodes, Snapshot mine, Snapshot theirs) {
		this.nodes = nodes;
		this.mine = mine;
		this.theirs = theirs;
	}

	void run() {
		boolean smaller = true;
		while (smaller) {
			smaller = nodes.values().removeIf(node -> node.place() != null && !nodes.containsKey(node.place().owner()));
			nodes.values().forEach(this::leaveGroup);
			smaller |= nodes.values().removeIf(this::hasNothingToFollow);
			smaller |= dissolve();
		}
		nodes.values().removeIf(this::isEmptied);
		nodes.values().forEach(node -> node.values().replaceAll(this::reachable));
	}

	private void leaveGroup(Node node) {
		if (node.group() != null && !nodes.containsKey(node.group().owner())) {
			node.values().put(Node.GROUP, null);
		}
	}

	private Object reachable(String name, Object value) {
		return value instanceof Links links && !nodes.keySet().containsAll(links.keys())
				? new Links(links.keys().stream().filter(nodes::containsKey).toList()) : value;
	}

	/** As it is when all that something follows is deleted; what has nothing to follow on one side already may stay. */
	private boolean hasNothingToFollow(Node node) {
		return node.object() instanceof Element element && Jobs.isFollower(element) && !follows(node)
				&& mine.node(node.key()).map(Pruning::links).orElse(true)
				&& theirs.node(node.key()).map(Pruning::links).orElse(true);
	}

	private boolean follows(Node node) {
		return node.values().values().stream()
				.anyMatch(value -> value instanceof Links links && links.keys().stream().anyMatch(nodes::containsKey));
	}

	private static boolean links(Node node) {
		return node.values().values().stream().anyMatch(value -> value instanceof Links links
				&& !links.keys().isEmpty());
	}

	/** A group that has come to hold less than two is none; what is left in it goes to the group around it. */
	private boolean dissolve() {
		List<Node> small = nodes.values().stream().filter(node -> node.kind().equals(GROUP)
				&& members(node, nodes) < SMALLEST_GROUP && grew(node, mine) && grew(node, theirs)).toList();
		for (Node group : small) {
			nodes.remove(group.key());
			Place around = nodes.containsKey(group.place().owner()) ? group.place() : null;
			for (Node node : nodes.values()) {
				if (within(node.group(), group)) {
					node.values().put(Node.GROUP, around == null || around.owner().equals("Job") ? null
							: new Place(around.owner(), FrisketPackageImpl.Literals.GROUP__ELEMENTS.getName()));
				} else if (within(node.place(), group)) {
					node.values().put(Node.PLACE, group.place());
				}
			}
		}
		return !small.isEmpty();
	}

	/** Whether it was a group of two or more on that side, or none. */
	private static boolean grew(Node group, Snapshot side) {
		return side.node(group.key()).isEmpty() || members(group, side.nodes()) >= SMALLEST_GROUP;
	}

	private static long members(Node group, Map<String, Node> all) {
		return all.values().stream().filter(node -> within(node.group(), group) || within(node.place(), group)).count();
	}

	private static boolean within(Place place, Node owner) {
		return place != null && place.owner().equals(owner.key());
	}

	/** A sheet of one side whose parts all lie on sheets of the other one. */
	private boolean isEmptied(Node node) {
		return node.kind().equals(SHEET) && !owners(nodes).contains(node.key())
				&& (mine.node(node.key()).isEmpty() || theirs.node(node.key()).isEmpty())
				&& (owners(mine.nodes()).contains(node.key()) || owners(theirs.nodes()).contains(node.key()));
	}

	private static Set<String> owners(Map<String, Node> all) {
		return all.values().stream().map(Node::place).filter(Objects::nonNull).map(Place::owner)
				.collect(Collectors.toSet());
	}
}
