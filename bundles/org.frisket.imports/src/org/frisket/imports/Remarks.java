package org.frisket.imports;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** Gathers remarks while a file is read; what happens again and again is counted and told once, at its first place. */
public final class Remarks {

	private record Counted(String place, int[] count, IntFunction<String> text) {
	}

	private final Map<String, Counted> counted = new LinkedHashMap<>();

	/**
	 * @param key   the same for what is counted together
	 * @param place in the file, see {@link Remark#place()}
	 * @param text  for a count
	 */
	public void count(String key, String place, IntFunction<String> text) {
		counted.computeIfAbsent(key, first -> new Counted(place, new int[1], text)).count()[0]++;
	}

	/** Told once however often it happens. */
	public void once(String place, String text) {
		count(text, place, count -> text);
	}

	/** In the order of their first places. */
	public List<Remark> list() {
		List<Remark> remarks = new ArrayList<>();
		counted.values().forEach(one -> remarks.add(new Remark(one.place(), one.text().apply(one.count()[0]))));
		return remarks;
	}
}
