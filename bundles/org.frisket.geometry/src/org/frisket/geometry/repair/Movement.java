package org.frisket.geometry.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.Straying;

/**
 * How far a course has moved anything: both directions of the Hausdorff distance between what there was and what there
 * is, but for what was taken and brought on purpose.
 *
 * @param result how far the result strays from what there was and what was brought
 * @param source how far what there was strays from the result, what was taken, and the edges of what was filled
 */
public record Movement(Straying result, Straying source) {

	/** Of the tolerance; the figures are exact to this. */
	private static final double ACCURACY = 0.05;

	static Movement of(Artwork source, Mended mended, Tolerance tolerance, Monitor monitor) {
		List<Contour> left = together(drawn(mended.artwork()), mended.taken());
		// what was filled took the edges round it
		left = together(left, mended.brought().stream().filter(Contour::isClosed).toList());
		return new Movement(ofResult(source, mended, tolerance, monitor),
				Straying.of(drawn(source), left, ACCURACY * tolerance.mm(), monitor));
	}

	static Straying ofResult(Artwork source, Mended mended, Tolerance tolerance, Monitor monitor) {
		return Straying.of(drawn(mended.artwork()), together(drawn(source), mended.brought()),
				ACCURACY * tolerance.mm(), monitor);
	}

	private static List<Contour> drawn(Artwork artwork) {
		return artwork.toOutline().contours().stream().filter(contour -> !contour.isEmpty()).toList();
	}

	private static List<Contour> together(List<Contour> some, List<Contour> more) {
		List<Contour> all = new ArrayList<>(some);
		all.addAll(more);
		return all;
	}

	/** The Hausdorff distance in mm. */
	public double mm() {
		return Math.max(result.mm(), source.mm());
	}

	/** Whether both are within a tolerance, as far as the figures are exact. */
	public boolean isWithin(Tolerance tolerance) {
		return result.isWithin(tolerance.mm()) && source.isWithin(tolerance.mm());
	}
}
