package org.frisket.typography.index;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.CodePoints;

/**
 * All fonts of some sources at one time. Immutable; answers from memory.
 *
 * @param fonts  in the order of the sources
 * @param broken what looked like a font and cannot be used, with the reason
 */
public record FontIndex(List<IndexedFont> fonts, List<UnreadableFontException> broken) {

	private static final Comparator<IndexedFont> BY_NAME = Comparator
			.comparing((IndexedFont f) -> f.face().names().family(), String.CASE_INSENSITIVE_ORDER)
			.thenComparing(f -> f.face().style().width()).thenComparing(f -> f.face().style().weight())
			.thenComparing(f -> f.face().style().italic()).thenComparing(f -> f.face().names().style())
			.thenComparing(f -> f.entry().place());

	public FontIndex {
		fonts = List.copyOf(fonts);
		broken = List.copyOf(broken);
	}

	/** Families that begin with the words first; then by family, width, weight and slant. */
	public List<IndexedFont> search(FontQuery query) {
		String wanted = IndexedFont.folded(query.words()).strip();
		String[] words = wanted.split("\\s+");
		CodePoints characters = CodePoints.in(query.characters());
		Stream<IndexedFont> found = fonts.stream().filter(f -> hasWords(f, words))
				.filter(f -> f.face().style().weight() >= query.leastWeight()
						&& f.face().style().weight() <= query.mostWeight())
				.filter(f -> query.italic().map(i -> i == f.face().style().italic()).orElse(true))
				.filter(f -> query.script().map(f.face().scripts()::contains).orElse(true))
				.filter(f -> f.face().characters().containsAll(characters));
		return found.sorted(Comparator.comparing((IndexedFont f) -> !f.key().startsWith(wanted)).thenComparing(BY_NAME))
				.toList();
	}

	private static boolean hasWords(IndexedFont font, String[] words) {
		for (String word : words) {
			if (!font.key().contains(word)) {
				return false;
			}
		}
		return true;
	}
}
