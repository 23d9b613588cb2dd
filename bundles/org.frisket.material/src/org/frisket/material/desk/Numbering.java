package org.frisket.material.desk;

import java.util.Collection;

/** Ids that people can type. */
public final class Numbering {

	private Numbering() {
	}

	/** The first of {@code word-1}, {@code word-2}, … after all that are taken. */
	public static String next(String word, Collection<String> taken) {
		int last = taken.stream().filter(id -> id.matches(word + "-\\d{1,8}"))
				.mapToInt(id -> Integer.parseInt(id.substring(word.length() + 1))).max().orElse(0);
		return word + '-' + (last + 1);
	}
}
