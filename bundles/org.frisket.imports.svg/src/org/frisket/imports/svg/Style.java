package org.frisket.imports.svg;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The properties of an element, inherited ones among them. */
final class Style {

	/** Those that are read at all. Those of the second list are not inherited. */
	private static final List<String> INHERITED = List.of("fill", "fill-rule", "stroke", "stroke-width", "stroke-linecap",
			"stroke-linejoin", "stroke-miterlimit", "stroke-dasharray", "stroke-dashoffset", "visibility", "color",
			"clip-rule", "font-family", "font-size", "font-weight", "font-style", "text-anchor", "letter-spacing",
			"word-spacing");
	private static final List<String> OWN = List.of("display", "clip-path", "mask", "opacity", "overflow", "transform");
	/** Where the value of a property stands. */
	private static final Map<String, Integer> PLACES = new HashMap<>();

	static {
		INHERITED.forEach(name -> PLACES.put(name, PLACES.size()));
		OWN.forEach(name -> PLACES.put(name, PLACES.size()));
	}

	static final Style INITIAL = new Style(new String[PLACES.size()]);

	/** By place; null for what nobody has declared. Not changed any more. */
	private final String[] values;

	private Style(String[] values) {
		this.values = values;
	}

	static boolean isProperty(String name) {
		return PLACES.containsKey(name);
	}

	/** What is declared of one element, or in one rule; of two declarations of a property the later one holds. */
	static final class Declarations {

		private final String[] values = new String[PLACES.size()];
		private boolean empty = true;

		/** Other things than properties are passed over. */
		void put(String name, String value) {
			Integer place = PLACES.get(name);
			if (place != null) {
				values[place] = value;
				empty = false;
			}
		}

		void putAll(Declarations others) {
			for (int i = 0; i < values.length && !others.empty; i++) {
				if (others.values[i] != null) {
					values[i] = others.values[i];
					empty = false;
				}
			}
		}

		boolean isEmpty() {
			return empty;
		}
	}

	/** The style of a child with these declarations of its own. */
	Style child(Declarations declared) {
		if (declared.isEmpty() && !hasOwn()) {
			return this;
		}
		String[] all = new String[values.length];
		System.arraycopy(values, 0, all, 0, INHERITED.size());
		for (int i = 0; i < all.length; i++) {
			String value = declared.values[i];
			if (value != null) {
				all[i] = value.equals("inherit") ? values[i] : value;
			}
		}
		return new Style(all);
	}

	private boolean hasOwn() {
		for (int i = INHERITED.size(); i < values.length; i++) {
			if (values[i] != null) {
				return true;
			}
		}
		return false;
	}

	/** @param property one of those that are read */
	String get(String property, String otherwise) {
		String value = values[PLACES.get(property)];
		return value == null ? otherwise : value;
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
