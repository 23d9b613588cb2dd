package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;

/**
 * Ways to make one region of several, all in one overlay however many there are. The same promises hold as for {@link
 * OutlineCleaner}: curves stay curves, nothing moves by more than the tolerance.
 */
public enum Combining {

	/** All that lies in any of them. */
	UNITE {
		@Override
		IntPredicate inside(int count) {
			return Winding.NON_ZERO;
		}
	},
	/** What lies in the first but in no other. */
	SUBTRACT {
		@Override
		IntPredicate inside(int count) {
			return w -> Winding.first(w) != 0 && Winding.second(w) == 0;
		}
	},
	/** What lies in each of them. */
	INTERSECT {
		@Override
		IntPredicate inside(int count) {
			return w -> Math.abs(Winding.first(w)) == count;
		}
	},
	/** What lies in an odd number of them: of two, in one but not in the other. */
	EXCLUDE {
		@Override
		IntPredicate inside(int count) {
			return Winding.EVEN_ODD;
		}
	};

	/** Every region winds once round each of its places, so that windings count regions. */
	abstract IntPredicate inside(int count);

	/**
	 * @param regions in an order that matters for {@link #SUBTRACT} only; any of them may be empty
	 * @return empty if there are none
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public Region of(List<Region> regions, Tolerance tolerance, Monitor monitor) {
		if (regions.size() <= 1) {
			return regions.isEmpty() ? Region.EMPTY : regions.get(0);
		}
		int counted = this == SUBTRACT ? 1 : regions.size();
		List<Contour> first = contours(regions.subList(0, counted));
		List<Contour> second = contours(regions.subList(counted, regions.size()));
		return new Region(OutlineCleaner.overlay(first, second, inside(regions.size()), tolerance, monitor,
				new ArrayList<>()));
	}

	private static List<Contour> contours(List<Region> regions) {
		return regions.stream().flatMap(region -> region.contours().stream()).toList();
	}
}
