package org.frisket.impose;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;

/**
 * Where one copy of a part lies.
 *
 * @param part    as it was given
 * @param sheet   which one, from 0
 * @param centre  where the centre of the part's bounds is brought, in mm from the sheet's corner
 * @param radians by how much the part is turned about that centre
 */
public record Placement(Part part, int sheet, Point centre, double radians) {

	/** From the part's own place to that on the sheet. */
	public Transform transform() {
		Bounds bounds = part.region().bounds();
		Point own = bounds.centre();
		return Transform.translation(-own.x(), -own.y()).then(Transform.rotation(radians))
				.then(Transform.translation(centre.x(), centre.y()));
	}

	/** The part as it lies there. */
	public Region region() {
		return part.region().transformed(transform());
	}
}
