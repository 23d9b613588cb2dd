package org.frisket.imports.dxf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

import org.frisket.imports.Remark;

/** Gathers remarks; what happens again and again is counted and told once, at its first place. */
final class Remarks {

	private record Counted(int line, int[] count, IntFunction<String> text) {
	}

	private final Map<String, Counted> counted = new LinkedHashMap<>();

	/** @param text for a count */
	void count(String key, int line, IntFunction<String> text) {
		counted.computeIfAbsent(key, first -> new Counted(line, new int[1], text)).count()[0]++;
	}

	/** @param line 0 if it is the file as a whole */
	void once(String key, int line, String text) {
		count(key, line, count -> text);
	}

	List<Remark> list() {
		List<Remark> remarks = new ArrayList<>();
		for (Counted one : counted.values()) {
			remarks.add(new Remark(one.line() == 0 ? "" : GroupReader.place(one.line()),
					one.text().apply(one.count()[0])));
		}
		return remarks;
	}
}
