package org.frisket.geometry.clean;

import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Monitor;

/**
 * Finds the boxes that come within a reach of each other. A line sweeps from left to right over boxes sorted by their
 * left sides; those that it meets are kept in level stripes, so that each is compared with those near its height only,
 * however many there are above and below.
 */
final class BoxSweep {

	/** Told of two boxes by their numbers. */
	@FunctionalInterface
	interface Meeting {

		/** @return true to look no further */
		boolean of(int later, int earlier);
	}

	private static final int MONITOR_STEP = 32;
	private static final int MOST_STRIPES = 1 << 14;

	private final List<? extends Boxed> boxes;
	private final double reach;
	private final double low;
	private final double height;
	private final int[][] open;
	private final int[] openCount;
	private int[] found = new int[16];
	private int foundCount;

	/** @param boxes ascending by their left sides */
	BoxSweep(List<? extends Boxed> boxes, double reach) {
		this.boxes = boxes;
		this.reach = reach;
		double least = Double.POSITIVE_INFINITY;
		double most = Double.NEGATIVE_INFINITY;
		double sum = 0;
		for (Boxed box : boxes) {
			least = Math.min(least, box.minY);
			most = Math.max(most, box.maxY);
			sum += box.maxY - box.minY + 2 * reach;
		}
		low = least;
		// as high as two boxes, so that most lie in one stripe or two
		double wanted = 2 * sum / Math.max(1, boxes.size());
		int count = wanted > 0 ? (int) Math.max(1, Math.min(MOST_STRIPES, (most - least) / wanted)) : 1;
		height = (most - least) / count;
		open = new int[count][];
		openCount = new int[count];
	}

	/** Each pair once, by the later box and then by the earlier one. */
	void run(Monitor monitor, Meeting meeting) {
		for (int i = 0; i < boxes.size(); i++) {
			if (i % MONITOR_STEP == 0) {
				monitor.check();
			}
			Boxed box = boxes.get(i);
			int first = stripe(box.minY - reach);
			int last = stripe(box.maxY + reach);
			foundCount = 0;
			for (int stripe = first; stripe <= last; stripe++) {
				collect(stripe, first, box);
			}
			if (last > first) {
				Arrays.sort(found, 0, foundCount);
			}
			for (int k = 0; k < foundCount; k++) {
				if (meeting.of(i, found[k])) {
					return;
				}
			}
			for (int stripe = first; stripe <= last; stripe++) {
				add(stripe, i);
			}
		}
	}

	private int stripe(double y) {
		return height > 0 ? (int) Math.max(0, Math.min(open.length - 1, (y - low) / height)) : 0;
	}

	/** A pair that shares several stripes is found in the first of them. */
	private void collect(int stripe, int first, Boxed box) {
		int[] numbers = open[stripe];
		int kept = 0;
		for (int k = 0; k < openCount[stripe]; k++) {
			Boxed other = boxes.get(numbers[k]);
			if (other.maxX + reach < box.minX) {
				continue;
			}
			numbers[kept++] = numbers[k];
			if (other.minY - reach <= box.maxY && box.minY <= other.maxY + reach
					&& stripe == Math.max(first, stripe(other.minY - reach))) {
				if (foundCount == found.length) {
					found = Arrays.copyOf(found, 2 * foundCount);
				}
				found[foundCount++] = numbers[k];
			}
		}
		openCount[stripe] = kept;
	}

	private void add(int stripe, int number) {
		int[] numbers = open[stripe];
		if (numbers == null) {
			numbers = new int[8];
		} else if (openCount[stripe] == numbers.length) {
			numbers = Arrays.copyOf(numbers, 2 * numbers.length);
		}
		open[stripe] = numbers;
		numbers[openCount[stripe]++] = number;
	}
}
