package org.frisket.help;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.help.HelpPage.Block;
import org.frisket.help.HelpPage.Kind;

/**
 * Finds pages by words or beginnings of words. A page is found if it has all of them; titles count more than headings,
 * headings more than text, and whole words more than beginnings. Pages that are as good stand in their own order.
 */
public final class HelpIndex {

	private static final double TITLE = 12;
	private static final double HEADING = 5;
	private static final double TEXT = 1;
	/** A beginning of a word against the whole word. */
	private static final double PREFIX = 0.5;
	/** No page is better for saying a word over and over. */
	private static final int MOST_COUNTED = 4;
	private static final int EXCERPT_LENGTH = 140;

	/**
	 * A page that has all the words.
	 *
	 * @param block   where on the page the most of them stand, as an index of its blocks; -1 for the title
	 * @param excerpt the words around them
	 */
	public record Hit(HelpPage page, double score, int block, String excerpt) {
	}

	/** A stretch of a page and what its words are worth. */
	private record Entry(int block, List<String> words, double weight) {

		double worth(String asked) {
			double worth = 0;
			int counted = 0;
			for (String word : words) {
				if (counted < MOST_COUNTED && word.startsWith(asked)) {
					worth += word.length() == asked.length() ? weight : weight * PREFIX;
					counted++;
				}
			}
			return worth;
		}
	}

	private record Indexed(HelpPage page, List<Entry> entries) {
	}

	private final List<Indexed> pages;

	public HelpIndex(HelpPages pages) {
		this.pages = pages.all().stream().map(HelpIndex::indexed).toList();
	}

	private static Indexed indexed(HelpPage page) {
		List<Entry> entries = new ArrayList<>();
		entries.add(new Entry(-1, WordScanner.words(page.title()), TITLE));
		for (int i = 0; i < page.blocks().size(); i++) {
			Block block = page.blocks().get(i);
			entries.add(new Entry(i, WordScanner.words(block.text()), block.kind() == Kind.HEADING ? HEADING : TEXT));
		}
		return new Indexed(page, entries);
	}

	/** The best page first; none if nothing was asked. */
	public List<Hit> search(String query) {
		List<String> asked = WordScanner.words(query).stream().distinct().toList();
		List<Hit> hits = new ArrayList<>();
		if (!asked.isEmpty()) {
			for (Indexed page : pages) {
				double score = score(page, asked);
				if (score > 0) {
					hits.add(hit(page, score, asked));
				}
			}
		}
		hits.sort(Comparator.comparingDouble(Hit::score).reversed());
		return hits;
	}

	/** 0 unless every word is there. */
	private static double score(Indexed page, List<String> asked) {
		double score = 0;
		for (String word : asked) {
			double worth = page.entries().stream().mapToDouble(entry -> entry.worth(word)).sum();
			if (worth == 0) {
				return 0;
			}
			score += worth;
		}
		return score;
	}

	private static Hit hit(Indexed page, double score, List<String> asked) {
		Entry best = page.entries().get(0);
		double most = -1;
		for (Entry entry : page.entries()) {
			// how many of the words stand together says more of a place than what they are worth
			double found = asked.stream().filter(word -> entry.worth(word) > 0).count();
			if (found > most) {
				best = entry;
				most = found;
			}
		}
		return new Hit(page.page(), score, best.block(), excerpt(page.page(), best.block()));
	}

	private static String excerpt(HelpPage page, int block) {
		int from = Math.max(0, block);
		if (from < page.blocks().size() && page.blocks().get(from).kind() == Kind.HEADING
				&& from + 1 < page.blocks().size()) {
			from++;
		}
		String text = from < page.blocks().size() ? page.blocks().get(from).text() : "";
		if (text.length() <= EXCERPT_LENGTH) {
			return text;
		}
		int end = text.lastIndexOf(' ', EXCERPT_LENGTH);
		return text.substring(0, end < 0 ? EXCERPT_LENGTH : end) + " …";
	}
}
