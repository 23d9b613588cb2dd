package org.frisket.geometry.clean;

/**
 * How an overlay is tried; all lengths in mm.
 *
 * @param weld        nodes nearer than this become one
 * @param deviation   between a curve and the chords that stand for it
 * @param snapCorners whether corners near an edge become nodes of it, which lays stretches that nearly coincide on top
 *                    of each other
 * @param grid        cell of the grid that everything is rounded to, 0 for none; with a grid curves become lines
 * @param hair        by how much a course is drawn back where several touch
 * @param bend        how much of a segment is straightened where a short one beside it goes, 0 to bend all of it
 */
record Attempt(double weld, double deviation, boolean snapCorners, double grid, double hair, double bend) {

	/** With curves, from the finest to the coarsest. */
	static Attempt[] faithful(double tolerance) {
		double hair = tolerance / 8;
		double bend = 6 * tolerance;
		return new Attempt[] { //
				new Attempt(tolerance / 512, tolerance / 4, false, 0, hair, 0),
				new Attempt(tolerance / 128, tolerance / 1024, false, 0, hair, bend),
				new Attempt(tolerance / 8, tolerance / 32, true, 0, hair, bend),
				new Attempt(tolerance / 3, tolerance / 64, true, 0, hair, bend) };
	}

	/** On a grid, for what nothing else can sort out. */
	static Attempt[] robust(double tolerance) {
		// (grid / sqrt 2) + deviation + hair is below the tolerance, grid - 2 hair is not
		return new Attempt[] { //
				new Attempt(tolerance / 64, tolerance / 8, false, 1.1 * tolerance, tolerance / 20, 0),
				new Attempt(tolerance / 64, tolerance / 8, false, 1.03 * tolerance, tolerance / 100, 0) };
	}
}
