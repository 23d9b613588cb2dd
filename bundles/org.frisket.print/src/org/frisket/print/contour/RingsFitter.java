package org.frisket.print.contour;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.fit.ContactFinder;

/**
 * Gives all rings of a picture their curves. Those that then touch or cross are fitted closer, then without corners that
 * stand out from the points, and in the end keep the straight edges between their points, which never do.
 */
final class RingsFitter {

	private static final double[] SHARES = { 1, 0.4, 0.8, 0.25 };
	/** So many of these attempts have corners. */
	private static final int CORNERED = 2;
	private static final double CHECKED_AT = 0.01;

	private RingsFitter() {
	}

	/**
	 * @param deviation how far in pixels curves may lie from the points; the tips of corners lie farther out
	 * @return a contour for each ring, in pixels
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	static List<Contour> fit(List<Ring> rings, double deviation, Monitor monitor) {
		List<Contour> fitted = new ArrayList<>(rings.size());
		BitSet open = new BitSet();
		for (int i = 0; i < rings.size(); i++) {
			fitted.add(null);
			open.set(i);
		}
		for (int attempt = 0; attempt < SHARES.length && !open.isEmpty(); attempt++) {
			RingFitter fitter = new RingFitter(SHARES[attempt] * deviation, attempt < CORNERED);
			for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
				monitor.check();
				fitted.set(i, fitter.fit(rings.get(i)));
				if (attempt == 0) {
					monitor.worked((i + 1.0) / rings.size());
				}
			}
			open = ContactFinder.contacts(fitted, CHECKED_AT * deviation, monitor);
		}
		for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
			fitted.set(i, Contour.polygon(rings.get(i).points()));
		}
		return fitted;
	}
}
