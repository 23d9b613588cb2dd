package org.frisket.geometry.measure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import org.frisket.geometry.Point;

/**
 * Which stretches of thin places belong together because discs along the one touch the other. Looked up by place: a ragged
 * contour has a stretch at every one of its thousands of corners.
 */
final class FacingRuns {

	private final List<DiscRing.Run> runs;
	/** By ring and place: the number of the stretch there, from 1; 0 for none. */
	private final int[][] runAt;
	private final Map<Point, List<Integer>> byEnd = new HashMap<>();

	private FacingRuns(List<DiscRing> rings, List<DiscRing.Run> runs) {
		this.runs = runs;
		runAt = new int[rings.size()][];
		for (int i = 0; i < runs.size(); i++) {
			int number = i;
			DiscRing.Run run = runs.get(i);
			int[] ring = runAt[run.ringNumber()] == null ? new int[rings.get(run.ringNumber()).size()]
					: runAt[run.ringNumber()];
			runAt[run.ringNumber()] = ring;
			run.eachPlace(place -> ring[place] = number + 1);
			run.ends().forEach(end -> byEnd.computeIfAbsent(end, key -> new ArrayList<>(2)).add(number));
		}
	}

	/** In the order of the first stretch of each. */
	static List<List<DiscRing.Run>> together(List<DiscRing> rings, List<DiscRing.Run> runs) {
		return new FacingRuns(rings, runs).together();
	}

	private List<List<DiscRing.Run>> together() {
		List<TreeSet<Integer>> beside = new ArrayList<>();
		runs.forEach(run -> beside.add(new TreeSet<>()));
		for (int i = 0; i < runs.size(); i++) {
			int number = i;
			runs.get(i).eachFoot((ring, place, at) -> {
				faced(ring, place, at).forEach(other -> {
					beside.get(number).add(other);
					beside.get(other).add(number);
				});
			});
		}
		List<List<DiscRing.Run>> groups = new ArrayList<>();
		boolean[] taken = new boolean[runs.size()];
		for (int i = 0; i < taken.length; i++) {
			if (!taken[i]) {
				taken[i] = true;
				List<DiscRing.Run> group = new ArrayList<>();
				Deque<Integer> next = new ArrayDeque<>(List.of(i));
				while (!next.isEmpty()) {
					int number = next.poll();
					group.add(runs.get(number));
					for (int other : beside.get(number)) {
						if (!taken[other]) {
							taken[other] = true;
							next.add(other);
						}
					}
				}
				groups.add(group);
			}
		}
		return groups;
	}

	/** The stretches that hold a place, or end at the same point. */
	private List<Integer> faced(int ring, int place, Point at) {
		List<Integer> found = new ArrayList<>(1);
		int[] numbers = runAt[ring];
		if (numbers == null) {
			return found;
		}
		int before = 0;
		for (int d = -DiscRing.SLACK; d <= DiscRing.SLACK; d++) {
			int number = numbers[Math.floorMod(place + d, numbers.length)];
			if (number > 0 && number != before) {
				found.add(number - 1);
				before = number;
			}
		}
		for (int number : byEnd.getOrDefault(at, List.of())) {
			if (runs.get(number).ringNumber() == ring) {
				found.add(number);
			}
		}
		return found;
	}
}
