package org.frisket.toolpath.internal.plan;

import java.util.ArrayList;
import java.util.List;

/** Which tool of each stage comes first and which last, so that tools are changed as seldom as can be. */
final class ToolOrder {

	private static final int MANY = Integer.MAX_VALUE / 2;

	/** The first and the last tool of a stage; the same if it has but one. */
	record Ends(String first, String last) {
	}

	private ToolOrder() {
	}

	/** @param tools of each stage, without repetition; none empty. Of equal ways the first in their order */
	static List<Ends> of(List<List<String>> tools) {
		// least[i][f]: changes from the stage i on if it begins with its tool f
		int[][] least = new int[tools.size()][];
		int[][] last = new int[tools.size()][];
		for (int i = tools.size() - 1; i >= 0; i--) {
			int n = tools.get(i).size();
			least[i] = new int[n];
			last[i] = new int[n];
			for (int f = 0; f < n; f++) {
				least[i][f] = MANY;
				for (int l = n - 1; l >= 0; l--) {
					if (n > 1 && l == f) {
						continue;
					}
					int rest = i + 1 == tools.size() ? 0 : least[i + 1][next(tools, i, l, least[i + 1])]
							+ (change(tools, i, l, least[i + 1]) ? 1 : 0);
					if (n - 1 + rest < least[i][f]) {
						least[i][f] = n - 1 + rest;
						last[i][f] = l;
					}
				}
			}
		}
		List<Ends> ends = new ArrayList<>();
		for (int i = 0, f = tools.isEmpty() ? 0 : first(least[0]); i < tools.size(); i++) {
			int l = last[i][f];
			ends.add(new Ends(tools.get(i).get(f), tools.get(i).get(l)));
			f = i + 1 == tools.size() ? 0 : next(tools, i, l, least[i + 1]);
		}
		return ends;
	}

	private static int first(int[] least) {
		int best = 0;
		for (int f = 1; f < least.length; f++) {
			best = least[f] < least[best] ? f : best;
		}
		return best;
	}

	/** What the next stage begins with after a tool. */
	private static int next(List<List<String>> tools, int stage, int last, int[] least) {
		int best = first(least);
		int same = tools.get(stage + 1).indexOf(tools.get(stage).get(last));
		return same >= 0 && least[same] <= least[best] + 1 ? same : best;
	}

	private static boolean change(List<List<String>> tools, int stage, int last, int[] least) {
		return !tools.get(stage + 1).get(next(tools, stage, last, least)).equals(tools.get(stage).get(last));
	}
}
