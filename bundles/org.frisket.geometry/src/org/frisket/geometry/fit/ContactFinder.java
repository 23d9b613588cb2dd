package org.frisket.geometry.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;

/** Finds the contours of a region that touch or cross another one, or themselves. */
public final class ContactFinder {

	/** So many pairs of edges, of some µs together, are looked at before the monitor is asked again. */
	private static final int MONITOR_STEP = 256;

	private ContactFinder() {
	}

	/**
	 * @param deviation how far in mm the chords looked at may stand off the curves
	 * @return the places in the list of contours that have a contact
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static BitSet contacts(List<Contour> contours, double deviation, Monitor monitor) {
		List<SegmentString> strings = new ArrayList<>();
		for (int i = 0; i < contours.size(); i++) {
			monitor.check();
			strings.add(new BasicSegmentString(Polygons.ring(contours.get(i), deviation).getCoordinates(), i));
		}
		Contacts contacts = new Contacts(monitor);
		new MCIndexNoder(contacts).computeNodes(strings);
		return contacts.found;
	}

	private static final class Contacts implements SegmentIntersector {

		final BitSet found = new BitSet();
		private final LineIntersector intersector = new RobustLineIntersector();
		private final Monitor monitor;
		private int looked;

		Contacts(Monitor monitor) {
			this.monitor = monitor;
		}

		@Override
		public void processIntersections(SegmentString a, int edgeOfA, SegmentString b, int edgeOfB) {
			if (++looked % MONITOR_STEP == 0) {
				monitor.check();
			}
			if (a == b && edgeOfA == edgeOfB) {
				return;
			}
			intersector.computeIntersection(a.getCoordinate(edgeOfA), a.getCoordinate(edgeOfA + 1),
					b.getCoordinate(edgeOfB), b.getCoordinate(edgeOfB + 1));
			if (intersector.hasIntersection() && !isJoint(a, edgeOfA, b, edgeOfB)) {
				found.set((int) a.getData());
				found.set((int) b.getData());
			}
		}

		/** Two neighbouring edges may share their joint but nothing more. */
		private boolean isJoint(SegmentString a, int edgeOfA, SegmentString b, int edgeOfB) {
			int edges = a.size() - 1;
			int apart = Math.abs(edgeOfA - edgeOfB);
			return a == b && (apart == 1 || apart == edges - 1) && intersector.getIntersectionNum() == 1;
		}

		@Override
		public boolean isDone() {
			return false;
		}
	}
}
