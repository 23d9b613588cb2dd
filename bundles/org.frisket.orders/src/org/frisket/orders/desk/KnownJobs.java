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

	public static final KnownJobs NONE = new KnownJobs(List.of());

	private final List<Entry> jobs;

	private KnownJobs(List<Entry> jobs) {
		this.jobs = jobs;
	}

	/** @param jobs the latest number first, each number once */
	static KnownJobs of(List<Entry> jobs) {
		return new KnownJobs(Collections.unmodifiableList(jobs));
	}

	/** All, the latest number first. */
	public List<Entry> jobs() {
		return jobs;
	}

	/** In steps that grow with the logarithm of how many jobs there are. */
	public Optional<Entry> find(long number) {
		int low = 0;
		int high = jobs.size() - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			long there = jobs.get(middle).number();
			if (there == number) {
				return Optional.of(jobs.get(middle));
			}
			if (there > number) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return Optional.empty();
	}

	/** With jobs as they are now, which may be new. */
	KnownJobs with(List<Entry> changed) {
		TreeMap<Long, Entry> fresh = new TreeMap<>(Comparator.reverseOrder());
		changed.stream().filter(each -> !find(each.number()).equals(Optional.of(each)))
				.forEach(each -> fresh.put(each.number(), each));
		if (fresh.isEmpty()) {
			return this;
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
		return of(merged);
	}

	/** When any of them was changed last. */
	Optional<Instant> latest() {
		return jobs.stream().map(Entry::changed).max(Comparator.naturalOrder());
	}

	BookState state() {
		return BookState.of(jobs);
	}
}
