package org.frisket.orders.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** The order of things that two sides have put in order. */
final class Sequence {

	private static final String START = "";

	private final Set<String> wanted;
	private final List<String> base;
	private final List<String> mine;
	private final List<String> theirs;

	/** @param wanted what is to be in order; each of it stands in one of the lists at least */
	Sequence(Set<String> wanted, List<String> base, List<String> mine, List<String> theirs) {
		this.wanted = wanted;
		this.base = base;
		this.mine = mine;
		this.theirs = theirs;
	}

	/** What is there, or was added, on both sides: all that neither has taken away. */
	static Set<String> of(List<String> base, List<String> mine, List<String> theirs) {
		Set<String> all = new LinkedHashSet<>(theirs);
		all.addAll(mine);
		all.removeIf(key -> base.contains(key) && !(mine.contains(key) && theirs.contains(key)));
		return all;
	}

	/**
	 * What one side has put in another order stands in that order; what one has put in stands behind what it stood
	 * behind there.
	 *
	 * @param side whose order holds; asked only if both sides have put the same things in different orders
	 * @param like tells which comes first of what two sides have put in at one place
	 */
	List<String> merged(Supplier<Side> side, Comparator<String> like) {
		Set<String> common = new LinkedHashSet<>(base);
		common.retainAll(wanted);
		common.retainAll(Set.copyOf(mine));
		common.retainAll(Set.copyOf(theirs));
		List<String> before = only(base, common);
		List<String> ofMine = only(mine, common);
		List<String> ofTheirs = only(theirs, common);
		List<String> backbone;
		if (ofMine.equals(before) || ofMine.equals(ofTheirs)) {
			backbone = ofTheirs;
		} else if (ofTheirs.equals(before)) {
			backbone = ofMine;
		} else {
			backbone = side.get() == Side.MINE ? ofMine : ofTheirs;
		}
		Map<String, List<String>> putInByMine = putIn(mine, common);
		Map<String, List<String>> putInByTheirs = putIn(theirs, common);
		Set<String> merged = new LinkedHashSet<>();
		addBehind(START, putInByMine, putInByTheirs, like, merged);
		for (String each : backbone) {
			merged.add(each);
			addBehind(each, putInByMine, putInByTheirs, like, merged);
		}
		merged.addAll(wanted);
		return List.copyOf(merged);
	}

	private static List<String> only(List<String> list, Set<String> wanted) {
		return list.stream().filter(wanted::contains).distinct().toList();
	}

	/** What a side has that is not common, by what it stands behind. */
	private Map<String, List<String>> putIn(List<String> list, Set<String> common) {
		Map<String, List<String>> putIn = new HashMap<>();
		String behind = START;
		for (String each : list) {
			if (common.contains(each)) {
				behind = each;
			} else if (wanted.contains(each)) {
				putIn.computeIfAbsent(behind, key -> new ArrayList<>()).add(each);
			}
		}
		return putIn;
	}

	private static void addBehind(String place, Map<String, List<String>> mine, Map<String, List<String>> theirs,
			Comparator<String> like, Set<String> merged) {
		List<String> one = mine.getOrDefault(place, List.of());
		List<String> other = theirs.getOrDefault(place, List.of());
		boolean mineFirst = !one.isEmpty() && !other.isEmpty() && like.compare(one.get(0), other.get(0)) < 0;
		merged.addAll(mineFirst ? one : other);
		merged.addAll(mineFirst ? other : one);
	}
}
