package org.frisket.material.shelf;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.frisket.material.Stock;
import org.frisket.material.StockField;

/** Stock as it is looked for: by words anywhere in what is said of it, and in an order. */
public final class ShelfList<T> {

	private record Entry<T>(T item, Stock stock, String text) {
	}

	private final List<Entry<T>> entries;

	/**
	 * @param stock of an item
	 * @param words what else people call it, such as its family in their language
	 */
	public ShelfList(List<T> items, Function<T, Stock> stock, Function<Stock, String> words) {
		entries = items.stream().map(item -> entry(item, stock.apply(item), words)).toList();
	}

	private static <T> Entry<T> entry(T item, Stock stock, Function<Stock, String> words) {
		String all = Arrays.stream(StockField.values()).map(field -> field.text(stock)).collect(Collectors.joining("\n"));
		return new Entry<>(item, stock, key(all + '\n' + words.apply(stock)));
	}

	/** Case, accents and compatible forms make no difference. */
	private static String key(String text) {
		return Normalizer.normalize(text, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "").toLowerCase(Locale.ROOT);
	}

	/** Whether a word of the text begins like this: "red" is found in "Red card", and not in "measured". */
	private static boolean hasWord(String text, String wanted) {
		boolean inside = !wanted.isEmpty() && !Character.isLetterOrDigit(wanted.charAt(0));
		for (int at = text.indexOf(wanted); at >= 0; at = text.indexOf(wanted, at + 1)) {
			if (inside || at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1))) {
				return true;
			}
		}
		return false;
	}

	/**
	 * @param words with all of which words in it are to begin; blank for everything
	 * @param low   whether only what it is time to order
	 */
	public List<T> find(String words, ShelfOrder order, boolean low) {
		String[] wanted = key(words).strip().split("\\s+");
		return entries.stream().filter(entry -> !low || entry.stock().isLow())
				.filter(entry -> Arrays.stream(wanted).allMatch(word -> hasWord(entry.text(), word)))
				.sorted(Comparator.comparing(Entry::stock, order.order())).map(Entry::item).toList();
	}

	public int size() {
		return entries.size();
	}
}
