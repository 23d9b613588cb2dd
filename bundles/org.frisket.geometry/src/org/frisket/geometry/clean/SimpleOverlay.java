package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Segment;
import org.frisket.geometry.clean.Repair.Kind;

/**
 * The overlay of contours that meet nowhere: all there is to find out is which of them bound something. This is the
 * common case in lettering, and it leaves what is clean already exactly as it is.
 */
final class SimpleOverlay {

	private final IntPredicate inside;
	private final double tolerance;

	SimpleOverlay(IntPredicate inside, double tolerance) {
		this.inside = inside;
		this.tolerance = tolerance;
	}

	/** Nothing if contours meet, or hold a segment that is too short or hooked. */
	Optional<Overlay.Result> of(List<Contour> contours, int[] windings, Monitor monitor) {
		Hooks hooks = new Hooks(tolerance, new ArrayList<>());
		for (Contour contour : contours) {
			monitor.check();
			if (hooks.removeFrom(contour.segments()) != contour.segments()) {
				return Optional.empty();
			}
			for (Segment segment : contour.segments()) {
				if (ShortSegments.isShort(segment, tolerance)) {
					return Optional.empty();
				}
			}
		}
		if (new ContactCheck(contours, tolerance).find(monitor) != null) {
			return Optional.empty();
		}
		List<Ring> rings = new ArrayList<>(contours.size());
		for (int i = 0; i < contours.size(); i++) {
			Ring ring = new Ring(contours.get(i), windings[i]);
			if (ring.isSpeck(tolerance)) {
				return Optional.empty();
			}
			rings.add(ring);
		}
		List<Repair> repairs = new ArrayList<>();
		Nesting nesting = new Nesting(rings, monitor);
		List<Ring> bounding = bounding(nesting, repairs);
		return PieceAssembler.assemble(bounding.equals(nesting.rings) ? nesting : new Nesting(bounding, monitor))
				.map(pieces -> new Overlay.Result(pieces, repairs));
	}

	/** Those rings with the inside on one side only, wound as they must be. */
	private List<Ring> bounding(Nesting nesting, List<Repair> repairs) {
		List<Ring> kept = new ArrayList<>();
		int[] within = new int[nesting.rings.size()];
		for (int i = 0; i < within.length; i++) {
			Ring ring = nesting.rings.get(i);
			int around = nesting.parent(i) < 0 ? 0 : within[nesting.parent(i)];
			within[i] = around + (ring.area > 0 ? ring.winding : -ring.winding);
			boolean bounds = inside.test(within[i]) != inside.test(around);
			if (bounds && ring.isOuter() == inside.test(within[i])) {
				kept.add(ring);
			} else if (bounds) {
				repairs.add(new Repair(Kind.WINDING_FIXED, ring.contour.start(), Math.abs(ring.area)));
				kept.add(new Ring(ring.contour.reversed(), ring.winding));
			}
		}
		return kept;
	}
}
