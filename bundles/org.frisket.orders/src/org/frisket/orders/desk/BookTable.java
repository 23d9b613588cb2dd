package org.frisket.orders.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.studio.NameKey;

/**
 * The jobs of an order book, to be looked through. It never changes; another table is made where another job is in the
 * book. What a column's order is, is worked out once, so that a filter only walks along it: the time of
 * {@link #find} grows with the number of jobs and with nothing else. Safe for use by several threads.
 */
public final class BookTable {

	/** What a job says beyond its own words, in small letters. */
	private record Tail(Stage stage, String stock) {
	}

	private record Order(BookColumn column, boolean descending) {
	}

	private final List<Entry> jobs;
	private final BookNames names;
	private final String[] tails;
	private final Map<Order, int[]> orders = new HashMap<>();

	private BookTable(List<Entry> jobs, BookNames names) {
		this.jobs = jobs;
		this.names = names;
		tails = new String[jobs.size()];
		Map<Tail, String> known = new HashMap<>();
		for (int i = 0; i < tails.length; i++) {
			Entry job = jobs.get(i);
			tails[i] = known.computeIfAbsent(new Tail(job.stage(), job.stock()), this::tail);
		}
	}

	private String tail(Tail of) {
		return NameKey.of(names.stage(of.stage()) + ' ' + of.stock() + ' ' + BookOrder.stocks(of.stock(), names));
	}

	/**
	 * @param jobs  the latest number first; must not change any more
	 * @param names as they are now
	 */
	public static BookTable of(List<Entry> jobs, BookNames names) {
		return new BookTable(jobs, names);
	}

	/** The latest number first. */
	public List<Entry> jobs() {
		return jobs;
	}

	/** Where a job is among them; negative if it is not. */
	int placeOf(long number) {
		return KnownJobs.placeOf(number, jobs);
	}

	/** What is looked for, in its order. */
	public BookSight find(BookQuery query, LocalDate today) {
		return find(query, today, null);
	}

	/**
	 * The same, faster where it can only be among what was found before, as when another letter is typed.
	 *
	 * @param before null for nothing
	 */
	public BookSight find(BookQuery query, LocalDate today, BookSight before) {
		int[] among = before != null && before.isWider(this, query, today) ? before.places() : order(query);
		String[] words = words(query.text());
		int[] found = new int[among.length];
		int size = 0;
		for (int place : among) {
			if (query.choice().takes(jobs.get(place), today) && says(place, words)) {
				found[size++] = place;
			}
		}
		return new BookSight(this, query, today, Arrays.copyOf(found, size));
	}

	private synchronized int[] order(BookQuery query) {
		return orders.computeIfAbsent(new Order(query.column(), query.descending()),
				order -> BookOrder.of(jobs, order.column(), order.descending(), names));
	}

	static String[] words(String text) {
		String key = NameKey.of(text);
		return key.isEmpty() ? new String[0] : key.split(" ");
	}

	private boolean says(int place, String[] words) {
		for (String word : words) {
			Entry job = jobs.get(place);
			if (!job.words().contains(word) && !tails[place].contains(word) && !isPartOf(word, job.number())) {
				return false;
			}
		}
		return true;
	}

	private static boolean isPartOf(String word, long number) {
		char first = word.charAt(0);
		return first >= '0' && first <= '9' && Long.toString(number).contains(word);
	}

	/** Places in groups, those without anything in common last. */
	List<BookGroup> groups(BookGrouping by, int[] places) {
		Map<String, Places> groups = new HashMap<>();
		for (int place : places) {
			for (String value : by.of(jobs.get(place))) {
				groups.computeIfAbsent(value, each -> new Places()).add(place);
			}
		}
		List<BookGroup> sorted = new ArrayList<>();
		groups.forEach((value, members) -> sorted.add(new BookGroup(by, value, members.toArray())));
		sorted.sort(BookGroup.order(names));
		return sorted;
	}

	/** A list of numbers that grows. */
	private static final class Places {

		private int[] all = new int[8];
		private int size;

		void add(int place) {
			if (size == all.length) {
				all = Arrays.copyOf(all, 2 * size);
			}
			all[size++] = place;
		}

		int[] toArray() {
			return Arrays.copyOf(all, size);
		}
	}
}
