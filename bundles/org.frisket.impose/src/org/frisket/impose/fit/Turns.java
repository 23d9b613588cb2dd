package org.frisket.impose.fit;

/** Turns in steps of the full circle, exact at right angles. */
public final class Turns {

	private Turns() {
	}

	public static double cos(int turn, int steps) {
		return sin(4 * turn + steps, 4 * steps);
	}

	/** Exact at multiples of a right angle. */
	public static double sin(int turn, int steps) {
		int t = Math.floorMod(turn, steps);
		if (4 * t % steps == 0) {
			return new double[] { 0, 1, 0, -1 }[4 * t / steps];
		}
		return Math.sin(2 * Math.PI * t / steps);
	}
}
