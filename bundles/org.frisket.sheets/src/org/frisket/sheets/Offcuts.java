package org.frisket.sheets;

import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;

/** What is left of a sheet once its parts are cut. */
public final class Offcuts {

	/** In mm, of the shorter side; less is waste. Common practice, no source. */
	public static final double LEAST_SIDE = 50;

	private Offcuts() {
	}

	/**
	 * The largest rectangle along the edges of the sheet that nothing lies in; it keeps the gap from all parts, and may
	 * reach the edges of the sheet, which are its own edges then. It is free to the tolerance; no other one is larger by
	 * more than what a shift of its sides by a quarter of a millimetre makes.
	 *
	 * @return in mm from the upper left corner of the sheet; empty if there is no room at all
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static Optional<Bounds> largest(LaidSheet sheet, Tolerance tolerance, Monitor monitor) {
		double width = sheet.sheet().getWidth();
		double height = sheet.sheet().getHeight();
		if (!(width > 0 && height > 0)) {
			return Optional.empty();
		}
		FreeSpace space = new FreeSpace(width, height);
		SheetSpace shapes = SheetSpace.of(sheet, tolerance);
		for (LaidPart part : sheet.parts()) {
			monitor.check();
			space.block(shapes.grown(part));
		}
		return space.largest(monitor);
	}

	/** Whether a rectangle is worth a place among the leftovers. */
	public static boolean isWorthKeeping(Bounds rectangle) {
		return Math.min(rectangle.width(), rectangle.height()) >= LEAST_SIDE;
	}
}
