package org.frisket.geometry.offset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Polygons;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The union of two sets of polygons in which those that keep clear of the other set stay as they are. */
final class PolygonUnion {

	private PolygonUnion() {
	}

	static Geometry of(Geometry one, Geometry other) {
		List<Geometry> clear = new ArrayList<>();
		List<Geometry> ofOne = meeting(one, other, clear);
		List<Geometry> ofOther = meeting(other, one, clear);
		if (!ofOne.isEmpty() && !ofOther.isEmpty()) {
			clear.add(OverlayNGRobust.overlay(Polygons.together(ofOne), Polygons.together(ofOther), OverlayNG.UNION));
		}
		return clear.size() == 1 ? clear.get(0) : Polygons.together(clear);
	}

	/** Those polygons whose boxes meet the box of one in the other set; the rest is added to the clear ones. */
	private static List<Geometry> meeting(Geometry one, Geometry other, List<Geometry> clear) {
		List<Geometry> meeting = new ArrayList<>();
		for (int i = 0; i < one.getNumGeometries(); i++) {
			(meets(one.getGeometryN(i), other) ? meeting : clear).add(one.getGeometryN(i));
		}
		return meeting;
	}

	private static boolean meets(Geometry polygon, Geometry others) {
		Envelope box = polygon.getEnvelopeInternal();
		boolean meets = box.intersects(others.getEnvelopeInternal());
		boolean found = false;
		for (int i = 0; meets && !found && i < others.getNumGeometries(); i++) {
			found = box.intersects(others.getGeometryN(i).getEnvelopeInternal());
		}
		return found;
	}
}
