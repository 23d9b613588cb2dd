package org.frisket.orders.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

import org.frisket.orders.Entry;

/** The jobs of an order book as they were when it was looked at; never changed. */
public final class KnownJobs {

	public static final KnownJobs NONE = of(List.of(), List.of());

	private final List<Entry> jobs;
	private final List<Long> unreadable;

	private KnownJobs(List<Entry> jobs, List<Long> unreadable) {
		this.jobs = jobs;
		this.unreadable = unreadable;
	}

	/**
	 * @param jobs       the latest number first, each number once
	 * @param unreadable numbers of those that are not among them because they cannot be read
	 */
	static KnownJobs of(List<Entry> jobs, List<Long> unreadable) {
		return new KnownJobs(Collections.unmodifiableList(jobs), List.copyOf(unreadable));
	}

	/** All, the latest number first. */
	public List<Entry> jobs() {
		return jobs;
	}

	/** The numbers of those that are missing because they cannot be read, the latest first. */
	public List<Long> unreadable() {
		return unreadable;
	}

	/** In steps that grow with the logarithm of how many jobs there are. */
	public Optional<Entry> find(long number) {
		int place = placeOf(number, jobs);
		return place < 0 ? Optional.empty() : Optional.of(jobs.get(place));
	}

	/** Where a job is among others, of which the latest number comes first; negative if it is not. */
	static int placeOf(long number, List<Entry> jobs) {
		int low = 0;
		int high = jobs.size() - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			long there = jobs.get(middle).number();
			if (there == number) {
				return middle;
			}
			if (there > number) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return -1;
	}

	/** With jobs as they are now, which may be new. @param cannot the numbers of those that cannot be read now */
	KnownJobs with(List<Entry> changed, List<Long> cannot) {
		TreeMap<Long, Entry> fresh = new TreeMap<>(Comparator.reverseOrder());
		changed.stream().filter(each -> !find(each.number()).equals(Optional.of(each)))
				.forEach(each -> fresh.put(each.number(), each));
		if (fresh.isEmpty()) {
			return cannot.equals(unreadable) ? this : of(jobs, cannot);
		}
		List<Entry> merged = new ArrayList<>(jobs.size() + fresh.size());
		for (Entry job : jobs) {
			while (!fresh.isEmpty() && fresh.firstKey() > job.number()) {
				merged.add(fresh.pollFirstEntry().getValue());
			}
			Entry now = fresh.remove(job.number());
			merged.add(now == null ? job : now);
		}
		merged.addAll(fresh.values());
		return of(merged, cannot);
	}

	/** When any of them was changed last. */
	Optional<Instant> latest() {
		return jobs.stream().map(Entry::changed).max(Comparator.naturalOrder());
	}

	BookState state() {
		return BookState.of(jobs);
	}
}
