package org.frisket.orders.compare;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Makes one state out of two that come from one. What one side alone has changed is as that side has it; where both
 * have, the user's choice holds. What comes of it is sound: nothing leads to what is not there, nothing follows itself.
 */
final class Merging {

	private final Snapshot base;
	private final Snapshot mine;
	private final Snapshot theirs;
	private final Function<String, Side> choices;

	private final Set<String> touched = new LinkedHashSet<>();
	/** Whose leading to others makes a ring together with what the other side does: the user decides of them. */
	private final Set<String> knotted = new HashSet<>();
	/** The same where the user's choices make a ring again. */
	private final Set<String> overruled = new HashSet<>();

	/** What there is in the end, and what is said of it. */
	private final Map<String, Node> nodes = new LinkedHashMap<>();
	private final Map<Place, List<String>> orders = new HashMap<>();

	/** @param choices whose state holds, by the row of a node */
	Merging(Snapshot base, Snapshot mine, Snapshot theirs, Function<String, Side> choices) {
		this.base = base;
		this.mine = mine;
		this.theirs = theirs;
		this.choices = choices;
	}

	Merging run() {
		Set<String> present = present();
		boolean tied = true;
		while (tied) {
			nodes.clear();
			present.forEach(key -> nodes.put(key, merged(key)));
			new Pruning(nodes, mine, theirs).run();
			Set<String> ring = Ring.of(nodes);
			ring.removeAll(Ring.of(mine.nodes()));
			ring.removeAll(Ring.of(theirs.nodes()));
			tied = !ring.isEmpty() && (knotted.addAll(ring) || overruled.addAll(ring));
		}
		putInOrder();
		return this;
	}

	Map<String, Node> nodes() {
		return nodes;
	}

	List<String> order(Place place) {
		return orders.getOrDefault(place, List.of());
	}

	/** The rows where both sides have changed the same. */
	Set<String> touched() {
		return touched;
	}

	private Side choice(Node node) {
		touched.add(node.row());
		return choices.apply(node.row());
	}

	private Set<String> present() {
		Concern ofMine = new Concern(base, mine);
		Concern ofTheirs = new Concern(base, theirs);
		Set<String> present = new LinkedHashSet<>();
		Set<String> all = new LinkedHashSet<>(theirs.nodes().keySet());
		all.addAll(mine.nodes().keySet());
		for (String key : all) {
			boolean here = mine.nodes().containsKey(key);
			boolean there = theirs.nodes().containsKey(key);
			Node node = (here ? mine : theirs).nodes().get(key);
			if (here && there || base.node(key).isEmpty()) {
				present.add(key);
			} else if ((here ? ofMine : ofTheirs).has(key) && choice(node) == (here ? Side.MINE : Side.THEIRS)) {
				present.add(key);
			}
		}
		return present;
	}

	private Node merged(String key) {
		Node here = mine.nodes().get(key);
		Node there = theirs.nodes().get(key);
		if (here == null || there == null) {
			return copy(here == null ? there : here);
		}
		Node before = base.nodes().get(key);
		Map<String, List<String>> units = new LinkedHashMap<>();
		there.values().keySet().forEach(name -> units.computeIfAbsent(there.unit(name), unit -> new ArrayList<>())
				.add(name));
		Node merged = copy(there);
		units.forEach((unit, features) -> {
			if (features.size() == 1 && here.values().get(unit) instanceof Links && !knotted.contains(key)) {
				merged.values().put(unit, links(before, here, there, unit));
			} else if (side(before, here, there, features) == Side.MINE) {
				features.forEach(name -> merged.values().put(name, here.values().get(name)));
			}
		});
		return merged;
	}

	private static Node copy(Node node) {
		return new Node(node.key(), node.kind(), node.object(), new LinkedHashMap<>(node.values()));
	}

	private Side side(Node before, Node here, Node there, Collection<String> features) {
		boolean changedHere = before == null || !same(before, here, features);
		boolean changedThere = before == null || !same(before, there, features);
		boolean tied = features.stream().anyMatch(name -> isTie(there, name)) && (changedHere || changedThere)
				&& !same(here, there, features);
		if (tied && overruled.contains(there.key())) {
			return Side.THEIRS;
		}
		if (tied && knotted.contains(there.key())) {
			return choice(there);
		}
		if (!changedHere || same(here, there, features)) {
			return Side.THEIRS;
		}
		return changedThere ? choice(there) : Side.MINE;
	}

	/** Whether a ring may come of it. */
	private static boolean isTie(Node node, String name) {
		return name.equals(Node.PLACE) || node.values().get(name) instanceof Links;
	}

	private static boolean same(Node one, Node other, Collection<String> features) {
		return features.stream().allMatch(name -> Objects.equals(one.values().get(name), other.values().get(name)));
	}

	private Links links(Node before, Node here, Node there, String name) {
		List<String> was = before == null ? List.of() : ((Links) before.values().get(name)).keys();
		List<String> isHere = ((Links) here.values().get(name)).keys();
		List<String> isThere = ((Links) there.values().get(name)).keys();
		EStructuralFeature feature = there.object().eClass().getEStructuralFeature(name);
		if (!feature.isMany()) {
			return (Links) (side(before, here, there, List.of(name)) == Side.MINE ? here : there).values().get(name);
		}
		return new Links(new Sequence(Sequence.of(was, isHere, isThere), was, isHere, isThere)
				.merged(() -> choice(there),
				Comparator.naturalOrder()));
	}

	private void putInOrder() {
		Map<Place, Set<String>> within = new LinkedHashMap<>();
		for (Node node : nodes.values()) {
			add(node.place(), node, within);
			add(node.group(), node, within);
		}
		within.forEach((place, keys) -> orders.put(place,
				new Sequence(keys, base.order(place), mine.order(place), theirs.order(place))
				.merged(() -> choice(nodes.get(place.owner())),
						Comparator.comparing(this::content))));
	}

	private static void add(Place place, Node node, Map<Place, Set<String>> within) {
		if (place != null) {
			within.computeIfAbsent(place, key -> new LinkedHashSet<>()).add(node.key());
		}
	}

	/** All that a node says of itself but its id, so that neither side comes first for being this or that side. */
	private String content(String key) {
		Node node = nodes.get(key);
		EClass type = node.object().eClass();
		// what has no id is told by its key
		StringBuilder text = new StringBuilder(type.getEIDAttribute() == null ? key : type.getName());
		node.values().forEach((name, value) -> {
			if (!(value instanceof Links || value instanceof Place || value instanceof Parts)) {
				text.append(' ').append(value);
			}
		});
		return text.toString();
	}
}
