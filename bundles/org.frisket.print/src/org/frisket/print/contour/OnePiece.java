package org.frisket.print.contour;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.form.HollowHull;

/**
 * Makes one piece of several: a hull that goes along with the hollows of all pieces, and bridges no wider mouths than it
 * must for them to hang together. Each piece is held by a neck about as wide as its gap. Holes are filled.
 */
final class OnePiece {

	private static final double STEP = 1.5;

	private OnePiece() {
	}

	/** @throws java.util.concurrent.CancellationException if the monitor says so */
	static Region of(Region region, Tolerance tolerance, Monitor monitor) {
		if (region.pieces().size() < 2) {
			return region;
		}
		double whole = region.bounds().width() + region.bounds().height();
		double reach = 10 * tolerance.mm();
		while (reach < whole && HollowHull.of(region, reach, tolerance, monitor).pieces().size() > 1) {
			reach *= STEP;
		}
		return HollowHull.of(region, Math.min(whole, STEP * reach), tolerance, monitor);
	}
}
