package org.frisket.imports.svg;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** The properties of an element, inherited ones among them. */
final class Style {

	static final Style INITIAL = new Style(Map.of());

	/** Those that are read at all. The second set is not inherited. */
	private static final Set<String> INHERITED = Set.of("fill", "fill-rule", "stroke", "stroke-width", "stroke-linecap",
			"stroke-linejoin", "stroke-miterlimit", "stroke-dasharray", "stroke-dashoffset", "visibility", "color",
			"clip-rule", "font-family", "font-size", "font-weight", "font-style", "text-anchor", "letter-spacing",
			"word-spacing");
	private static final Set<String> OWN = Set.of("display", "clip-path", "mask", "opacity", "overflow", "transform");

	private final Map<String, String> values;

	private Style(Map<String, String> values) {
		this.values = values;
	}

	static boolean isProperty(String name) {
		return INHERITED.contains(name) || OWN.contains(name);
	}

	/** The style of a child with these declarations of its own. */
	Style child(Map<String, String> declared) {
		boolean anyOwn = values.keySet().stream().anyMatch(OWN::contains);
		if (declared.isEmpty() && !anyOwn) {
			return this;
		}
		Map<String, String> all = new HashMap<>(values);
		all.keySet().removeAll(OWN);
		declared.forEach((name, value) -> {
			if (!value.equals("inherit")) {
				all.put(name, value);
			} else if (values.containsKey(name)) {
				all.put(name, values.get(name));
			}
		});
		return new Style(all);
	}

	String get(String property, String otherwise) {
		return values.getOrDefault(property, otherwise);
	}

	boolean isShown() {
		return !get("display", "inline").equals("none");
	}

	boolean isVisible() {
		String visibility = get("visibility", "visible");
		return !visibility.equals("hidden") && !visibility.equals("collapse");
	}

	/** Whether a paint, {@code fill} or {@code stroke}, covers anything. */
	boolean paints(String property, String initial) {
		String paint = get(property, initial).strip();
		return !paint.equals("none") && !paint.equals("transparent") && !paint.isEmpty();
	}
}
