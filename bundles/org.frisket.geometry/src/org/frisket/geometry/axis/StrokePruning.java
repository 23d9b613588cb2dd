package org.frisket.geometry.axis;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Leaves of an axis the strokes a hand would draw. A branch that ends freely is a stroke if it reaches far enough
 * beyond the disc of the fork it comes from; one that tapers to a point is rather the corner of a thick stroke, and has
 * to reach farther.
 */
final class StrokePruning {

	/** How far beyond the disc of its fork a branch must reach, in radii of the disc: a blunt one, and a pointed one. */
	private static final double BLUNT_REACH = 0.6;
	private static final double POINTED_REACH = 3;
	/** A branch whose end is at least this wide, as a part of its fork, is blunt. */
	private static final double BLUNT = 0.5;

	private StrokePruning() {
	}

	/** The strokes, parted also where branches were taken off: a stroke may turn a corner there. */
	static List<Stroke> pruned(List<Stroke> axis) {
		List<Stroke> strokes = new ArrayList<>(axis);
		Set<AxisPoint> scars = new HashSet<>();
		boolean changed = true;
		while (changed) {
			Degrees degrees = Degrees.of(strokes);
			List<Stroke> stubs = strokes.stream().filter(stroke -> isStub(stroke, degrees)).toList();
			stubs.forEach(stub -> scars.add(degrees.of(stub.to()) == 1 ? stub.first() : stub.last()));
			// the corners at the end of a stroke go together, or the last one would be taken for its continuation
			changed = strokes.removeAll(stubs) | merge(strokes);
		}
		return new Parting(scars, Degrees.of(strokes)).parted(strokes);
	}

	private static boolean isStub(Stroke stroke, Degrees degrees) {
		boolean endsFreely = degrees.of(stroke.to()) == 1;
		boolean beginsFreely = degrees.of(stroke.from()) == 1;
		if (endsFreely == beginsFreely) {
			return false;
		}
		AxisPoint fork = endsFreely ? stroke.first() : stroke.last();
		AxisPoint tip = endsFreely ? stroke.last() : stroke.first();
		double reach = (stroke.length() + tip.radius() - fork.radius()) / fork.radius();
		double taper = 1 - Math.min(1, tip.radius() / (BLUNT * fork.radius()));
		return reach < BLUNT_REACH + (POINTED_REACH - BLUNT_REACH) * taper;
	}

	/** Makes one stroke of two that meet where nothing else does. */
	private static boolean merge(List<Stroke> strokes) {
		Degrees degrees = Degrees.of(strokes);
		int before = strokes.size();
		int i = 0;
		while (i < strokes.size()) {
			Stroke stroke = strokes.get(i);
			if (stroke.from() != stroke.to() && degrees.of(stroke.to()) == 2) {
				join(strokes, i, stroke);
			} else if (stroke.from() != stroke.to() && degrees.of(stroke.from()) == 2) {
				join(strokes, i, stroke.reversed());
			} else {
				i++;
			}
		}
		return strokes.size() < before;
	}

	/** Has the stroke at an index go on beyond its end, which only one other shares. */
	private static void join(List<Stroke> strokes, int index, Stroke stroke) {
		int node = stroke.to();
		int other = 0;
		while (other == index || strokes.get(other).from() != node && strokes.get(other).to() != node) {
			other++;
		}
		Stroke next = strokes.get(other);
		strokes.set(index, stroke.then(next.from() == node ? next : next.reversed()));
		strokes.remove(other);
	}
}
