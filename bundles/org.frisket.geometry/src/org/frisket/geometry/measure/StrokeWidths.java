package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.TouchingDiscs.Contact;

/**
 * How wide the strokes of one piece are, for any number of questions. What is thinner than a width is what no disc of
 * the width inside the piece covers (local thickness, Hildebrand and Rüegsegger 1997). Taken literally every corner is
 * thin at its tip; so that counts which
 * <ul>
 * <li>lies between two sides, and parts what such discs cover or closes a ring of it: a <em>neck</em>; or
 * <li>is all of the piece; or
 * <li>ends freely and is deeper, by more than the tolerance, than it is wide where a disc stops: a <em>stroke</em> or
 * spike. Of straight-sided tips those sharper than about 31 degrees count, blunter ones are corners.
 * </ul>
 * Nothing is cut out to find this: along the boundary it shows in the discs that touch there.
 */
public final class StrokeWidths {

	private static final double STEP = 1.04;
	private static final double EXACT = 1e-4;
	/** Of the tolerance; below this corners cannot be told from strokes. */
	private static final double NARROWEST = 3;

	/** How wide the piece is at its narrowest near a place, which is the middle of the stroke there. */
	public record Width(double mm, Point place) {
	}

	private interface Looking {
		double tolerance(double width);
	}

	private final List<DiscRing> rings;
	private final double widest;
	private final Monitor monitor;

	private StrokeWidths(TouchingDiscs discs, Monitor monitor) {
		this.monitor = monitor;
		rings = DiscRing.of(discs);
		widest = 2 * discs.largestRadius();
	}

	/**
	 * @param tolerance of the widths that are found
	 * @param monitor   asked at every question too
	 */
	public static StrokeWidths of(Piece piece, Tolerance tolerance, Monitor monitor) {
		monitor.check();
		return new StrokeWidths(new TouchingDiscs(piece, tolerance.mm() / 4), monitor);
	}

	/** Diameter in mm of the largest disc inside the piece. */
	public double widest() {
		return widest;
	}

	/** The narrowest place. Below a few tolerances nothing is told apart: a needle's point is as wide as that. */
	public Width thinnest(Tolerance tolerance) {
		return thinnest(NARROWEST * tolerance.mm(), width -> tolerance.mm());
	}

	/**
	 * The narrowest place when the tolerance is a share of the width, as it is for a limit and a tolerance while the
	 * piece grows and shrinks. A needle's point is narrow at every size: it gives {@code from}.
	 *
	 * @param from the least width in mm that matters
	 */
	public Width thinnest(double from, double share) {
		return thinnest(from, width -> share * width);
	}

	private Width thinnest(double from, Looking looking) {
		double below = from;
		double width = from;
		List<Part> found = parts(width, looking.tolerance(width));
		while (found.isEmpty()) {
			below = width;
			width *= STEP;
			found = parts(width, looking.tolerance(width));
		}
		return narrowed(found.get(0), below, width, looking, false);
	}

	/** All that is narrower than a width, each with its own, the narrowest first. */
	public List<Width> thinnerThan(double width, Tolerance tolerance) {
		return parts(width, tolerance.mm()).stream()
				.map(part -> narrowed(part, 0, width, any -> tolerance.mm(), true))
				.sorted(Comparator.comparingDouble(Width::mm).thenComparingDouble(w -> w.place().y())
						.thenComparingDouble(w -> w.place().x()))
				.toList();
	}

	/** By halving. @param within whether only what is left of the part counts */
	private Width narrowed(Part first, double below, double above, Looking looking, boolean within) {
		Part part = first;
		double low = below;
		double high = above;
		while (high - low > EXACT * high) {
			double middle = (low + high) / 2;
			Part left = null;
			for (Part candidate : parts(middle, looking.tolerance(middle))) {
				if (!within || candidate.overlaps(part)) {
					left = candidate;
					break;
				}
			}
			if (left == null) {
				low = middle;
			} else {
				high = middle;
				part = left;
			}
		}
		return new Width(high, part.middle());
	}

	/** What is thin together: stretches of the boundary. */
	private record Part(List<DiscRing.Run> runs) {

		boolean overlaps(Part other) {
			return runs.stream().anyMatch(run -> other.runs.stream().anyMatch(run::overlaps));
		}

		Point middle() {
			return runs.stream().map(DiscRing.Run::narrowest).min(Comparator.comparingDouble(Contact::radius)).orElseThrow()
					.centre();
		}
	}

	private List<Part> parts(double width, double tolerance) {
		monitor.check();
		List<DiscRing.Run> runs = new ArrayList<>();
		for (DiscRing ring : rings) {
			runs.addAll(ring.runs(width / 2));
		}
		List<Part> parts = new ArrayList<>();
		for (List<DiscRing.Run> together : FacingRuns.together(rings, runs)) {
			if (together.size() > 1 || together.get(0).isNeck() || together.get(0).isStroke(width, tolerance)) {
				parts.add(new Part(together));
			}
		}
		return parts;
	}
}
