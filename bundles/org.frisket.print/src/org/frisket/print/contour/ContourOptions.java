package org.frisket.print.contour;

import java.util.Optional;

/**
 * What a contour is to be like.
 *
 * @param backdrop   what is no art; empty to be found by the picture's border
 * @param difference how much, in CIE 1976 ΔE*ab, a colour may differ from that of the backdrop and still be it
 * @param shadow     how much lightness, in L* of 100, a shadow on the backdrop may take; 0 for none
 * @param specks     parts and holes whose longer side is shorter, in mm, are left out
 * @param speckArea  parts and holes that are smaller, in mm², are left out
 * @param holes      what becomes of them
 * @param smoothing  radius in mm of the disc that fills gaps and takes away what is finer than it; 0 for none
 * @param offset     how far in mm the contour goes outwards, for a border round the art, or inwards if negative
 * @param one        whether all parts are to become one, by bridges over the gaps between them
 * @param deviation  how far in pixels curves may lie from the edge that was found; 0.3 is finer than it is seen
 */
public record ContourOptions(Optional<Backdrop> backdrop, double difference, double shadow, double specks,
		double speckArea, HoleRule holes, double smoothing, double offset, boolean one, double deviation) {

	/** What holds unless something else is said. */
	public static final ContourOptions USUAL = new ContourOptions(Optional.empty(), 10, 0, 0.5, 0, HoleRule.AS_TOLD, 0, 0,
			false, 0.3);

	private static final double LARGEST = 1000;

	/** @throws IllegalArgumentException if a value is negative that must not be, not finite, or beyond a metre */
	public ContourOptions {
		require(difference >= 0 && difference <= 100, "difference", difference);
		require(shadow >= 0 && shadow <= 100, "shadow", shadow);
		require(specks >= 0 && specks <= LARGEST, "specks", specks);
		require(speckArea >= 0 && speckArea <= LARGEST * LARGEST, "speckArea", speckArea);
		require(smoothing >= 0 && smoothing <= LARGEST, "smoothing", smoothing);
		require(Math.abs(offset) <= LARGEST, "offset", offset);
		require(deviation > 0 && deviation <= LARGEST, "deviation", deviation);
	}

	private static void require(boolean holds, String name, double value) {
		if (!holds) {
			throw new IllegalArgumentException(name + " of " + value);
		}
	}

	/** With what is no art. */
	public ContourOptions on(Backdrop behind) {
		return new ContourOptions(Optional.of(behind), difference, shadow, specks, speckArea, holes, smoothing, offset, one,
				deviation);
	}

	public ContourOptions colours(double newDifference, double newShadow) {
		return new ContourOptions(backdrop, newDifference, newShadow, specks, speckArea, holes, smoothing, offset, one,
				deviation);
	}

	/** @param extent in mm @param area in mm² */
	public ContourOptions without(double extent, double area) {
		return new ContourOptions(backdrop, difference, shadow, extent, area, holes, smoothing, offset, one, deviation);
	}

	public ContourOptions holes(HoleRule rule) {
		return new ContourOptions(backdrop, difference, shadow, specks, speckArea, rule, smoothing, offset, one, deviation);
	}

	/** @param radius in mm */
	public ContourOptions smoothed(double radius) {
		return new ContourOptions(backdrop, difference, shadow, specks, speckArea, holes, radius, offset, one, deviation);
	}

	/** @param distance in mm */
	public ContourOptions moved(double distance) {
		return new ContourOptions(backdrop, difference, shadow, specks, speckArea, holes, smoothing, distance, one,
				deviation);
	}

	public ContourOptions inOnePiece(boolean whole) {
		return new ContourOptions(backdrop, difference, shadow, specks, speckArea, holes, smoothing, offset, whole,
				deviation);
	}

	/** @param pixels above zero */
	public ContourOptions within(double pixels) {
		return new ContourOptions(backdrop, difference, shadow, specks, speckArea, holes, smoothing, offset, one, pixels);
	}
}
