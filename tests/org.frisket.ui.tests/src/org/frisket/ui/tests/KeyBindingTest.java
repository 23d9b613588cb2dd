package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.bindings.keys.KeySequence;
import org.junit.jupiter.api.Test;

/** No key of the suite stands in the way of another one. */
class KeyBindingTest {

	private static final String NODES = "org.frisket.ui.bench.nodes.context";
	/** While nodes are edited, these mean what the menu of nodes says. */
	private static final List<String> CHANGED_BY_NODES = List.of("INSERT", "M1+B 1", "M1+B 2", "M1+B 3", "M1+B 4", "M1+B 5",
			"M1+B 6", "M1+B 7", "M1+B 8", "M1+B 9");

	private record Binding(String context, KeySequence keys, String written, String command, String bundle) {

		@Override
		public String toString() {
			return written + " for " + command + " in " + context + " (" + bundle + ")";
		}
	}

	/** Those of the suite; what the platform binds gives way to them. */
	private static List<Binding> bindings() throws Exception {
		List<Binding> bindings = new ArrayList<>();
		for (IConfigurationElement key : Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.bindings")) {
			if (key.getName().equals("key") && key.getContributor().getName().startsWith("org.frisket.")) {
				String parameters = Stream.of(key.getChildren("parameter")).map(p -> " " + p.getAttribute("value"))
						.collect(Collectors.joining());
				bindings.add(new Binding(key.getAttribute("contextId"), KeySequence.getInstance(key.getAttribute("sequence")),
						key.getAttribute("sequence"), key.getAttribute("commandId") + parameters,
						key.getContributor().getName()));
			}
		}
		assertTrue(bindings.size() > 100, bindings.toString());
		return bindings;
	}

	private static Map<String, String> parents() {
		Map<String, String> parents = new HashMap<>();
		for (IConfigurationElement context : Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.contexts")) {
			parents.put(context.getAttribute("id"), context.getAttribute("parentId"));
		}
		assertEquals("org.frisket.ui.bench.context", parents.get(NODES));
		return parents;
	}

	/** Whether it holds wherever the other one holds, and elsewhere too. */
	private static boolean isAround(String context, String other, Map<String, String> parents) {
		String parent = parents.get(other);
		return parent != null && (parent.equals(context) || isAround(context, parent, parents));
	}

	@Test
	void noKeyIsBoundTwice() throws Exception {
		record Place(String context, KeySequence keys) {
		}
		Map<Place, List<Binding>> places = bindings().stream()
				.collect(Collectors.groupingBy(binding -> new Place(binding.context(), binding.keys())));
		assertEquals(List.of(), places.values().stream().filter(bindings -> bindings.size() > 1).toList());
	}

	@Test
	void noKeyMeansAnotherThingInAnInnerContextButThoseOfNodes() throws Exception {
		List<Binding> bindings = bindings();
		Map<String, String> parents = parents();
		Map<String, List<String>> changed = new TreeMap<>();
		for (Binding outer : bindings) {
			bindings.stream().filter(inner -> inner.keys().equals(outer.keys()))
					.filter(inner -> isAround(outer.context(), inner.context(), parents))
					.forEach(inner -> changed.computeIfAbsent(inner.context(), id -> new ArrayList<>()).add(inner.written()));
		}
		changed.values().forEach(keys -> keys.sort(null));
		assertEquals(Map.of(NODES, CHANGED_BY_NODES), changed);
	}

	@Test
	void noKeyIsTheBeginningOfOthers() throws Exception {
		List<Binding> bindings = bindings();
		Map<String, String> parents = parents();
		List<String> wrong = new ArrayList<>();
		for (Binding first : bindings) {
			bindings.stream().filter(longer -> longer.keys().startsWith(first.keys(), false))
					.filter(longer -> longer.context().equals(first.context())
							|| isAround(first.context(), longer.context(), parents)
							|| isAround(longer.context(), first.context(), parents))
					.forEach(longer -> wrong.add(first + " hides " + longer));
		}
		assertEquals(List.of(), wrong);
	}
}
