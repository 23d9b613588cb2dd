package org.frisket.toolpath.order;

/** The nearest others of all stops, and how far they are, by the nearer of their ends. */
final class Neighbours {

	private final int[][] near;
	private final double[][] way;

	/** @param most for each stop */
	Neighbours(Stops stops, int most) {
		near = new int[stops.count][];
		way = new double[stops.count][];
		Nearest nearest = stops.count > 1 ? new Nearest(stops, most) : null;
		for (int i = 0; i < stops.count; i++) {
			near[i] = nearest == null ? new int[0] : nearest.of(i);
			way[i] = new double[near[i].length];
			for (int k = 0; k < near[i].length; k++) {
				way[i][k] = Math.min(stops.nearest(near[i][k], stops.inX[i], stops.inY[i]),
						stops.nearest(near[i][k], stops.outX[i], stops.outY[i]));
			}
		}
	}

	/** The nearest first. */
	int[] of(int stop) {
		return near[stop];
	}

	/** How far they are. */
	double[] ways(int stop) {
		return way[stop];
	}
}
