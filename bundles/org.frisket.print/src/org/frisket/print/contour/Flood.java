package org.frisket.print.contour;

import java.util.Arrays;
import java.util.BitSet;

import org.frisket.geometry.Monitor;

/** What can be reached from some pixels of a picture by pixels that share a side, row by row. */
final class Flood {

	private static final int MONITOR_STEP = 1 << 12;

	private final int width;
	private final int height;
	/** What has not been reached yet, and may be. */
	private final BitSet open;
	private final BitSet reached;
	private int[] stack = new int[1 << 10];
	private int size;

	private Flood(int width, int height, BitSet open) {
		this.width = width;
		this.height = height;
		this.open = open;
		reached = new BitSet(width * height);
	}

	/**
	 * @param open the pixels that may be passed; those that are reached are taken out of it
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	static BitSet fromBorder(int width, int height, BitSet open, Monitor monitor) {
		Flood flood = new Flood(width, height, open);
		for (int x = 0; x < width; x++) {
			flood.from(x, monitor);
			flood.from((height - 1) * width + x, monitor);
		}
		for (int y = 0; y < height; y++) {
			flood.from(y * width, monitor);
			flood.from(y * width + width - 1, monitor);
		}
		return flood.reached;
	}

	/**
	 * @param seeds where it begins
	 * @param open  the pixels that may be passed; those that are reached are taken out of it
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	static BitSet from(BitSet seeds, int width, int height, BitSet open, Monitor monitor) {
		Flood flood = new Flood(width, height, open);
		for (int seed = seeds.nextSetBit(0); seed >= 0; seed = seeds.nextSetBit(seed + 1)) {
			if (open.get(seed)) {
				flood.from(seed, monitor);
			}
		}
		return flood.reached;
	}

	private void from(int seed, Monitor monitor) {
		push(seed);
		int looked = 0;
		while (size > 0) {
			if (++looked % MONITOR_STEP == 0) {
				monitor.check();
			}
			int pixel = stack[--size];
			if (!open.get(pixel)) {
				continue;
			}
			int row = pixel / width * width;
			int left = Math.max(row, open.previousClearBit(pixel) + 1);
			int right = Math.min(row + width, open.nextClearBit(pixel));
			open.clear(left, right);
			reached.set(left, right);
			if (row > 0) {
				pushRuns(left - width, right - width);
			}
			if (row / width < height - 1) {
				pushRuns(left + width, right + width);
			}
		}
	}

	private void pushRuns(int from, int to) {
		int at = open.nextSetBit(from);
		while (at >= 0 && at < to) {
			push(at);
			at = open.nextSetBit(open.nextClearBit(at));
		}
	}

	private void push(int pixel) {
		if (size == stack.length) {
			stack = Arrays.copyOf(stack, 2 * size);
		}
		stack[size++] = pixel;
	}
}
