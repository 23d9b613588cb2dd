package org.frisket.imports.svg;

import java.util.Locale;

/** Whether an element is drawn at all: SVG 1.1, section 5.8. */
final class Conditions {

	private Conditions() {
	}

	/** No extension is known here; of languages it is that of the user. */
	static boolean hold(Node node) {
		String languages = node.attribute("systemLanguage");
		return node.attribute("requiredExtensions") == null
				&& (languages == null || holds(languages, Locale.getDefault().getLanguage()));
	}

	private static boolean holds(String languages, String own) {
		for (String language : languages.toLowerCase(Locale.ROOT).strip().split("\\s*,\\s*")) {
			if (language.equals(own) || language.startsWith(own + "-")) {
				return true;
			}
		}
		return false;
	}
}
