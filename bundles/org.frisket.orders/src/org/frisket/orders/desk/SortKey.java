package org.frisket.orders.desk;

import java.text.Normalizer;
import java.util.regex.Pattern;

import org.frisket.studio.NameKey;

/** Names in the order of a dictionary (DIN 5007-1, from memory): letters with marks stand with those without. */
final class SortKey {

	private static final Pattern MARKS = Pattern.compile("\\p{M}+");

	private SortKey() {
	}

	static String of(String name) {
		String key = NameKey.of(name);
		if (key.chars().allMatch(c -> c < 0x80)) {
			return key;
		}
		return MARKS.matcher(Normalizer.normalize(key, Normalizer.Form.NFD)).replaceAll("").replace("ß", "ss");
	}
}
