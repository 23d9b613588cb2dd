package org.frisket.studio;

import java.text.Normalizer;
import java.util.Locale;

/** Names that people would take for the same have the same key; texts are searched by it. */
public final class NameKey {

	private NameKey() {
	}

	/** In small letters, without needless blanks, whatever way its characters were put in. */
	public static String of(String name) {
		return Normalizer.normalize(name, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
	}
}
