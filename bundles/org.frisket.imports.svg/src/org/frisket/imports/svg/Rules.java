package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.StringTokenizer;

import org.frisket.imports.svg.Style.Declarations;
import org.w3c.css.sac.Selector;

/**
 * The rules of style sheets. Each is kept under what its selector asks of the element itself, its id, a class or its
 * name, so that an element is held against few of them.
 */
final class Rules {

	/** @param order in which rules of equal weight stand */
	record Rule(Selector selector, int weight, int order, Declarations declarations, Declarations important) {
	}

	private static final Comparator<Rule> LIGHTEST_FIRST = Comparator.comparingInt(Rule::weight)
			.thenComparingInt(Rule::order);

	private final Map<String, List<Rule>> shelves = new HashMap<>();
	private int count;

	/** @param selector a known one */
	void add(Selector selector, Declarations declarations, Declarations important) {
		shelves.computeIfAbsent(Selectors.key(selector), key -> new ArrayList<>())
				.add(new Rule(selector, Selectors.specificity(selector), count++, declarations, important));
	}

	/** The lightest first. */
	List<Rule> matching(Node node) {
		if (count == 0) {
			return List.of();
		}
		List<Rule> found = new ArrayList<>();
		add(Selectors.ANY, node, found);
		add(node.name(), node, found);
		String id = node.attribute("id");
		if (id != null) {
			add(Selectors.ofId(id), node, found);
		}
		StringTokenizer classes = new StringTokenizer(node.attribute("class", ""));
		while (classes.hasMoreTokens()) {
			add(Selectors.ofClass(classes.nextToken()), node, found);
		}
		found.sort(LIGHTEST_FIRST);
		return found;
	}

	private void add(String key, Node node, List<Rule> found) {
		for (Rule rule : shelves.getOrDefault(key, List.of())) {
			if (Selectors.matches(rule.selector(), node)) {
				found.add(rule);
			}
		}
	}
}
