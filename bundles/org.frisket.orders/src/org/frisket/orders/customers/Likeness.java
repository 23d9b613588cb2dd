package org.frisket.orders.customers;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How much two names look like one. Marks on letters, case, what is no letter or digit, and words that say no more than the
 * form of a firm have no weight; nor has the order of the words. Of what is left, the likeness is one less the share of
 * letters that would have to be changed (Levenshtein's distance, over the longer of both), in the order of the words as
 * they stand or by the alphabet, whichever is more.
 * <p>
 * From {@value #ENOUGH} on two names are proposed as one: one slip in seven letters, two in fourteen. Common practice, no
 * source; it errs towards asking.
 */
public final class Likeness {

	/** At this likeness names are proposed as one. */
	public static final double ENOUGH = 0.85;

	/** Forms of firms, and words that join. */
	private static final Set<String> WEIGHTLESS = Set.of("ltd", "limited", "inc", "co", "company", "llc", "plc", "gmbh", "ag",
			"kg", "ug", "ohg", "gbr", "ek", "ev", "and", "und", "the");

	private Likeness() {
	}

	/** From 0 to 1; 1 for names that mean the same. */
	public static double of(String one, String other) {
		return of(words(one), words(other));
	}

	/** The same of names that were taken apart. */
	static double of(List<String> one, List<String> other) {
		double asTheyStand = likeness(String.join(" ", one), String.join(" ", other));
		return asTheyStand == 1 ? 1 : Math.max(asTheyStand, likeness(sorted(one), sorted(other)));
	}

	private static String sorted(List<String> words) {
		return words.stream().sorted().collect(Collectors.joining(" "));
	}

	/** What of a name has weight; all of it if nothing had. */
	static List<String> words(String name) {
		String plain = Normalizer.normalize(name, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "").toLowerCase(Locale.ROOT)
				.replace("ß", "ss").replaceAll("[.'’]", "").replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
		List<String> all = Arrays.stream(plain.split(" ")).filter(word -> !word.isEmpty()).toList();
		List<String> weighty = all.stream().filter(word -> !WEIGHTLESS.contains(word)).toList();
		return weighty.isEmpty() ? all : weighty;
	}

	private static double likeness(String one, String other) {
		int longer = Math.max(one.length(), other.length());
		if (longer == 0) {
			return 1;
		}
		return 1 - distance(one, other) / (double) longer;
	}

	/** How many letters must be put in, left out or replaced to make one of the other. */
	static int distance(String one, String other) {
		int[] above = new int[other.length() + 1];
		Arrays.setAll(above, i -> i);
		for (int i = 1; i <= one.length(); i++) {
			int[] row = new int[other.length() + 1];
			row[0] = i;
			for (int j = 1; j <= other.length(); j++) {
				int replaced = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
				row[j] = Math.min(replaced, Math.min(above[j], row[j - 1]) + 1);
			}
			above = row;
		}
		return above[other.length()];
	}
}
