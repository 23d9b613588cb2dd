package org.frisket.geometry.clean;

import org.frisket.geometry.Point;

/** A stretch of a source, from one parameter to another; it runs against the source if {@code from > to}. */
record Strand(Source source, double from, double to) {

	Strand reversed() {
		return new Strand(source, to, from);
	}

	Point at(double fraction) {
		return source.segment().at(from + (to - from) * fraction);
	}

	/**
	 * The two strands as one, if {@code next} goes on along the same source; null otherwise.
	 *
	 * @param slack what the nodes may have swallowed of the source between the two, in mm
	 */
	Strand joined(Strand next, double slack) {
		if (source != next.source || from < to != next.from < next.to || from < to != from < next.to) {
			return null;
		}
		if (to != next.from) {
			Point here = source.segment().at(to);
			Point between = source.segment().at((to + next.from) / 2);
			if (here.distance(between) > slack || here.distance(next.at(0)) > slack) {
				return null;
			}
		}
		return new Strand(source, from, next.to);
	}
}
