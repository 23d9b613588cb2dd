package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.repair.Mend;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Changed contours of a clean region that must not come to meet each other, nor themselves. */
final class Apart {

	private Apart() {
	}

	/**
	 * The changed contours; the original again for those that cross themselves or come within a deviation of another.
	 *
	 * @param changed   as many as the originals; the very object where nothing was changed
	 * @param deviation at which they are flattened to be compared
	 * @param mends     one for each changed contour at the end of the list; those that are taken back go
	 */
	static List<Contour> kept(List<Contour> originals, List<Contour> changed, double deviation, List<Mend> mends) {
		List<Contour> kept = new ArrayList<>(changed);
		boolean again = true;
		while (again) {
			again = false;
			List<LinearRing> rings = kept.stream().map(contour -> Polygons.ring(contour, deviation)).toList();
			STRtree tree = new STRtree();
			for (int i = 0; i < rings.size(); i++) {
				tree.insert(rings.get(i).getEnvelopeInternal(), i);
			}
			for (int i = 0; i < rings.size(); i++) {
				if (kept.get(i) != originals.get(i) && meets(i, rings, tree, 2 * deviation)) {
					kept.set(i, originals.get(i));
					again = true;
				}
			}
		}
		int mend = mends.size() - (int) count(originals, changed);
		for (int i = 0; i < kept.size(); i++) {
			if (changed.get(i) != originals.get(i)) {
				if (kept.get(i) == originals.get(i)) {
					mends.remove(mend);
				} else {
					mend++;
				}
			}
		}
		return kept;
	}

	private static long count(List<Contour> originals, List<Contour> changed) {
		long count = 0;
		for (int i = 0; i < originals.size(); i++) {
			count += originals.get(i) != changed.get(i) ? 1 : 0;
		}
		return count;
	}

	private static boolean meets(int index, List<LinearRing> rings, STRtree tree, double reach) {
		LinearRing ring = rings.get(index);
		if (!ring.isSimple()) {
			return true;
		}
		IndexedFacetDistance near = new IndexedFacetDistance(ring);
		for (Object other : tree.query(ring.getEnvelopeInternal())) {
			if ((Integer) other != index && near.isWithinDistance(rings.get((Integer) other), reach)) {
				return true;
			}
		}
		return false;
	}
}
