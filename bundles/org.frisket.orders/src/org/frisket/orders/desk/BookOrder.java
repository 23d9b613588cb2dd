package org.frisket.orders.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.frisket.orders.Entry;

/** Places of jobs in the order of a column. What is empty comes last either way; of equals the latest comes first. */
final class BookOrder {

	private BookOrder() {
	}

	/** @param jobs the latest number first */
	static int[] of(List<Entry> jobs, BookColumn column, boolean descending, BookNames names) {
		int size = jobs.size();
		if (column == BookColumn.NUMBER) {
			return descending ? IntStream.range(0, size).toArray()
					: IntStream.range(0, size).map(i -> size - 1 - i).toArray();
		}
		Comparable<?>[] keys = keys(jobs, column, names);
		@SuppressWarnings("unchecked")
		Comparator<Integer> byKey = (a, b) -> ((Comparable<Object>) keys[a]).compareTo(keys[b]);
		Comparator<Integer> order = descending ? byKey.reversed() : byKey;
		Comparator<Integer> emptyLast = Comparator.comparing((Integer place) -> keys[place] == null);
		// sorting is stable, and the places are in the order of numbers
		return IntStream.range(0, size).boxed()
				.sorted(emptyLast.thenComparing((a, b) -> keys[a] == null ? 0 : order.compare(a, b)))
				.mapToInt(Integer::intValue).toArray();
	}

	private static Comparable<?>[] keys(List<Entry> jobs, BookColumn column, BookNames names) {
		Map<String, String> known = new HashMap<>();
		Comparable<?>[] keys = new Comparable<?>[jobs.size()];
		for (int i = 0; i < keys.length; i++) {
			Entry job = jobs.get(i);
			keys[i] = switch (column) {
			case NUMBER -> job.number();
			case CUSTOMER -> text(job.customer(), known);
			case TITLE -> text(job.title(), known);
			case STAGE -> job.stage();
			case DUE -> job.due().<LocalDate>map(due -> due).orElse(null);
			case STOCK -> job.stock().isEmpty() ? null
					: known.computeIfAbsent(job.stock(), ids -> SortKey.of(stocks(ids, names)));
			case QUANTITY -> job.quantity();
			};
		}
		return keys;
	}

	private static String text(String name, Map<String, String> known) {
		return name.isBlank() ? null : known.computeIfAbsent(name, SortKey::of);
	}

	/** The names of several stocks. @param ids with blanks between them */
	static String stocks(String ids, BookNames names) {
		return ids.indexOf(' ') < 0 ? names.stock(ids)
				: String.join(", ", List.of(ids.split(" ")).stream().map(names::stock).toList());
	}
}
