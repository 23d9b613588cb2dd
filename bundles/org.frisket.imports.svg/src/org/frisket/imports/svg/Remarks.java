package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

import org.frisket.imports.Remark;

/** Gathers remarks; what happens again and again is counted and told once, at its first place. */
final class Remarks {

	private record Counted(String place, int[] count, IntFunction<String> text) {
	}

	private final Map<String, Counted> counted = new LinkedHashMap<>();

	/** @param text for a count */
	void count(String key, Node node, IntFunction<String> text) {
		counted.computeIfAbsent(key, first -> new Counted(node.place(), new int[1], text)).count()[0]++;
	}

	void once(Node node, String text) {
		count(text, node, count -> text);
	}

	List<Remark> list() {
		List<Remark> remarks = new ArrayList<>();
		counted.values().forEach(one -> remarks.add(new Remark(one.place(), one.text().apply(one.count()[0]))));
		return remarks;
	}
}
