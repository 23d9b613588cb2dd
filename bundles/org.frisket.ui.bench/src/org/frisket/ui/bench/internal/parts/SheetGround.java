package org.frisket.ui.bench.internal.parts;

import org.frisket.geometry.Bounds;

/** How large a sheet is shown under a job that has none of its own yet. It grows when it must and never shrinks. */
final class SheetGround {

	/** A5 lying. */
	private static final Bounds BLANK = new Bounds(0, 0, 210, 148);
	private static final double MARGIN = 15;
	private static final double LEAST_MARGIN = 3;
	private static final double STEP = 10;

	private SheetGround() {
	}

	/** The sheet for what lies on it; the one shown before stays while it is large enough. All in mm. */
	static Bounds around(Bounds content, Bounds before) {
		if (content.isEmpty()) {
			return before.isEmpty() ? BLANK : before;
		}
		Bounds needed = content.grown(LEAST_MARGIN);
		if (before.minX() <= needed.minX() && before.minY() <= needed.minY() && before.maxX() >= needed.maxX()
				&& before.maxY() >= needed.maxY()) {
			return before;
		}
		Bounds wanted = content.grown(MARGIN).with(before);
		return new Bounds(down(wanted.minX()), down(wanted.minY()), -down(-wanted.maxX()), -down(-wanted.maxY()));
	}

	private static double down(double mm) {
		return Math.floor(mm / STEP) * STEP;
	}
}
