package org.frisket.ui.views.internal.stack;

import java.util.ArrayList;
import java.util.List;

/** Keeps lines that run down beside each other apart: each goes into the first lane that is free along its length. */
final class Lanes {

	private record Stretch(int lane, int from, int to) {
	}

	private final List<Stretch> taken = new ArrayList<>();
	private final int most;

	/** @param most how many lanes there are; further lines share the last */
	Lanes(int most) {
		this.most = most;
	}

	/** @return the lane, 0 or more, at or after {@code least} */
	int take(int least, int from, int to) {
		int lane = least;
		while (lane < most - 1 && isTaken(lane, from, to)) {
			lane++;
		}
		lane = Math.min(lane, most - 1);
		taken.add(new Stretch(lane, from, to));
		return lane;
	}

	private boolean isTaken(int lane, int from, int to) {
		return taken.stream().anyMatch(each -> each.lane == lane && each.from <= to && from <= each.to);
	}
}
