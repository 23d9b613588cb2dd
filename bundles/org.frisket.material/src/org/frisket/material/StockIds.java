package org.frisket.material;

import java.text.Normalizer;
import java.util.Locale;
import java.util.function.Predicate;

/** Ids made of names, so that a person can read and type them. */
public final class StockIds {

	private static final int LONGEST = 56;
	private static final String NAMELESS = "stock";

	private StockIds() {
	}

	/** Always the same of the same name. */
	public static String of(String name) {
		String letters = Normalizer.normalize(name.replace("ß", "ss"), Normalizer.Form.NFKD).replaceAll("\\p{M}+", "");
		String words = letters.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
		String id = words.substring(0, Math.min(LONGEST, words.length())).replaceAll("-$", "");
		return id.isEmpty() ? NAMELESS : id;
	}

	/** Of a name, with a number behind it where the id is taken. */
	public static String free(String name, Predicate<String> taken) {
		String id = of(name);
		String free = id;
		for (int i = 2; taken.test(free); i++) {
			free = id + '-' + i;
		}
		return free;
	}
}
