package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Which ring lies directly in which, for rings that do not cross. */
final class Nesting {

	/** The rings, every one after the ring around it. */
	final List<Ring> rings;
	private final int[] parent;

	Nesting(List<Ring> unordered, Monitor monitor) {
		rings = new ArrayList<>(unordered);
		rings.sort(Comparator.comparingDouble(r -> -Math.abs(r.area)));
		parent = new int[rings.size()];
		STRtree boxes = new STRtree();
		for (int i = 0; i < parent.length; i++) {
			boxes.insert(envelope(rings.get(i)), i);
		}
		for (int i = 0; i < parent.length; i++) {
			monitor.check();
			parent[i] = around(i, boxes);
		}
	}

	/** The smallest of those that hold it, which is the last before it that does. */
	private int around(int ring, STRtree boxes) {
		Point place = rings.get(ring).contour.start();
		int found = -1;
		for (Object near : boxes.query(new Envelope(place.x(), place.x(), place.y(), place.y()))) {
			int other = (Integer) near;
			if (other < ring && other > found && rings.get(other).holds(rings.get(ring))) {
				found = other;
			}
		}
		return found;
	}

	private static Envelope envelope(Ring ring) {
		Bounds box = ring.contour.bounds();
		return new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
	}

	/** Number of the ring around a ring, -1 if there is none. */
	int parent(int ring) {
		return parent[ring];
	}
}
