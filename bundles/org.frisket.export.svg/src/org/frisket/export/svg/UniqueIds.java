package org.frisket.export.svg;

import java.util.HashMap;
import java.util.Map;

/**
 * Gives each thing of a document an id of its own: on a laid sheet the same element is there once for each copy, and so are
 * its pieces. The first keeps its id; others are numbered from 2.
 */
final class UniqueIds {

	private static final String NAMELESS = "part";

	/** By id that was given, the number of the last one that was made from it. */
	private final Map<String, Integer> given = new HashMap<>();

	/** Keeps an id from being given. */
	void take(String id) {
		given.putIfAbsent(id, 1);
	}

	/** @param wanted may be null or no name for XML */
	String next(String wanted) {
		String id = name(wanted);
		if (given.putIfAbsent(id, 1) == null) {
			return id;
		}
		String numbered;
		do {
			numbered = id + "-" + given.merge(id, 1, Integer::sum);
		} while (given.putIfAbsent(numbered, 1) != null);
		return numbered;
	}

	/**
	 * As XML 1.0 wants names, those without a colon (Namespaces in XML 1.0, production NCName), of its letters only the plain
	 * ones: others become low lines, and one that begins with something else gets a word before it.
	 */
	private static String name(String wanted) {
		if (wanted == null || wanted.isEmpty()) {
			return NAMELESS;
		}
		StringBuilder name = new StringBuilder();
		wanted.codePoints()
				.forEach(c -> name.appendCodePoint(isPlain(c) || c >= '0' && c <= '9' || c == '-' || c == '.' ? c : '_'));
		return isPlain(name.charAt(0)) ? name.toString() : NAMELESS + "-" + name;
	}

	private static boolean isPlain(int c) {
		return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_';
	}
}
