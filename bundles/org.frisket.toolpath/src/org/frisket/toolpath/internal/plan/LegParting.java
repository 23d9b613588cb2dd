package org.frisket.toolpath.internal.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Parts the errands of a stage into legs of one tool each. Where what lies within is worked by another tool, that one
 * has to be put in earlier, and perhaps again later. A tool that can do all that is left for it is taken before one
 * that cannot.
 */
final class LegParting {

	private final StageWork work;
	private final int[] waits;
	private final boolean[] done;

	private LegParting(StageWork work) {
		this.work = work;
		done = new boolean[work.errands().size()];
		waits = new int[done.length];
		for (int after : work.after()) {
			if (after >= 0) {
				waits[after]++;
			}
		}
	}

	/** The errands of each leg by their numbers, ascending. */
	static List<int[]> of(StageWork work, ToolOrder.Ends ends) {
		return new LegParting(work).part(ends);
	}

	private List<int[]> part(ToolOrder.Ends ends) {
		List<String> tools = new ArrayList<>(
				work.errands().stream().map(errand -> errand.tool).distinct().sorted().toList());
		// the first first, the last last, the others between in the order of their names
		tools.sort(Comparator.comparingInt(tool -> tool.equals(ends.first()) ? 0 : tool.equals(ends.last()) ? 2 : 1));
		List<int[]> legs = new ArrayList<>();
		String before = null;
		for (int left = done.length; left > 0;) {
			int[] best = {};
			boolean whole = false;
			String taken = null;
			for (String tool : tools) {
				if (tool.equals(before)) {
					continue;
				}
				int[] leg = reach(tool);
				boolean all = leg.length > 0 && leg.length == left(tool);
				if (all && !whole || all == whole && leg.length > best.length && !whole) {
					best = leg;
					whole = all;
					taken = tool;
				}
			}
			for (int errand : best) {
				finish(errand);
			}
			left -= best.length;
			before = taken;
			legs.add(best);
		}
		return legs;
	}

	private int left(String tool) {
		return (int) IntStream.range(0, done.length)
				.filter(i -> !done[i] && work.errands().get(i).tool.equals(tool)).count();
	}

	/** All that a tool can do from here on without another. */
	private int[] reach(String tool) {
		int[] waiting = waits.clone();
		List<Integer> ready = new ArrayList<>(IntStream.range(0, done.length)
				.filter(i -> !done[i] && waiting[i] == 0 && work.errands().get(i).tool.equals(tool)).boxed().toList());
		for (int k = 0; k < ready.size(); k++) {
			int after = work.after()[ready.get(k)];
			if (after >= 0 && --waiting[after] == 0 && work.errands().get(after).tool.equals(tool)) {
				ready.add(after);
			}
		}
		return ready.stream().mapToInt(Integer::intValue).sorted().toArray();
	}

	private void finish(int errand) {
		done[errand] = true;
		if (work.after()[errand] >= 0) {
			waits[work.after()[errand]]--;
		}
	}
}
