package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;

/**
 * Union, difference, intersection and symmetric difference of regions. The same promises hold as for
 * {@link OutlineCleaner}: curves stay curves, nothing moves by more than the tolerance.
 */
public final class RegionBoolean {

	/** All that lies in any of the regions. */
	public Region union(List<Region> regions, Tolerance tolerance, Monitor monitor) {
		List<Contour> contours = new ArrayList<>();
		regions.forEach(r -> contours.addAll(r.contours()));
		return overlay(contours, List.of(), Winding.NON_ZERO, tolerance, monitor);
	}

	/** What lies in the first region but not in the second. */
	public Region subtract(Region from, Region what, Tolerance tolerance, Monitor monitor) {
		return overlay(from.contours(), what.contours(), w -> Winding.first(w) != 0 && Winding.second(w) == 0,
				tolerance, monitor);
	}

	/** What lies in both regions. */
	public Region intersect(Region one, Region other, Tolerance tolerance, Monitor monitor) {
		return overlay(one.contours(), other.contours(), w -> Winding.first(w) != 0 && Winding.second(w) != 0,
				tolerance, monitor);
	}

	/** What lies in exactly one of the two regions. */
	public Region xor(Region one, Region other, Tolerance tolerance, Monitor monitor) {
		return overlay(one.contours(), other.contours(), w -> Winding.first(w) != 0 != (Winding.second(w) != 0),
				tolerance, monitor);
	}

	private static Region overlay(List<Contour> first, List<Contour> second, IntPredicate inside, Tolerance tolerance,
			Monitor monitor) {
		return new Region(OutlineCleaner.overlay(first, second, inside, tolerance, monitor, new ArrayList<>()));
	}
}
