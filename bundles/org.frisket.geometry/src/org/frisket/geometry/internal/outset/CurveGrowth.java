package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.PieceAssembler;
import org.frisket.geometry.fit.ContactFinder;
import org.frisket.geometry.fit.ShortSegments;

/**
 * Round offsets of one region, on the curves. Each piece is moved for itself; what grows together is united quarter by
 * quarter of the plane, so that where one piece is another than before, all the rest is known. The result depends on the
 * pieces alone. Safe for several threads.
 */
public final class CurveGrowth {

	/** Of the tolerance, for curves to miss what they stand for. */
	private static final double FIT_SHARE = 0.15;
	/** Of the tolerance: segments are no shorter than this. */
	private static final double SHORTEST = 1.05;
	private static final double CHECKED_AT = 0.01;
	/** Of the tolerance: holes and pieces hold a disc as wide as this. */
	private static final double SPECK = 0.7;

	private final Region region;
	private final Tolerance tolerance;
	private final Memory memory;
	private final Map<Piece, PieceRims> pieces = new HashMap<>();

	/** @param memory of parts that were grown */
	public CurveGrowth(Region region, Tolerance tolerance, Memory memory) {
		this.region = region;
		this.tolerance = tolerance;
		this.memory = memory;
	}

	/**
	 * Everything within a distance, or farther than that from the outside if it is negative.
	 *
	 * @return nothing where edges of the result touch or nearly do
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public Optional<Region> by(double distance, Monitor monitor) {
		List<Loop> loops = new ArrayList<>();
		if (distance > 0) {
			Optional<Rims> grown = grown(new Quarters(region.pieces()), distance, monitor);
			if (grown.isEmpty()) {
				return Optional.empty();
			}
			loops.addAll(grown.get().loops());
		} else {
			for (Piece piece : region.pieces()) {
				monitor.check();
				try {
					loops.addAll(Rims.of(new Ground(piece, true), -distance, monitor).loops());
				} catch (Unclear unclear) {
					return Optional.empty();
				}
			}
		}
		return curves(loops, distance < 0, monitor);
	}

	private Optional<Rims> grown(Quarters part, double distance, Monitor monitor) {
		record Key(List<Piece> pieces, double distance) {
		}
		return memory.get(new Key(part.pieces(), distance), () -> {
			monitor.check();
			if (part.pieces().size() == 1) {
				return piece(part.pieces().get(0)).by(distance, monitor);
			}
			Optional<Rims> sum = null;
			for (Quarters each : part.parted()) {
				Optional<Rims> grown = grown(each, distance, monitor);
				sum = sum == null ? grown : united(sum, grown, monitor);
			}
			return sum;
		});
	}

	private static Optional<Rims> united(Optional<Rims> one, Optional<Rims> other, Monitor monitor) {
		if (one.isEmpty() || other.isEmpty()) {
			return Optional.empty();
		}
		try {
			return Optional.of(one.get().with(other.get(), monitor));
		} catch (Unclear unclear) {
			return Optional.empty();
		}
	}

	private synchronized PieceRims piece(Piece piece) {
		return pieces.computeIfAbsent(piece, key -> new PieceRims(key, memory));
	}

	private Optional<Region> curves(List<Loop> loops, boolean inwards, Monitor monitor) {
		RimCurves curves = new RimCurves(FIT_SHARE * tolerance.mm());
		ShortSegments shortSegments = new ShortSegments(SHORTEST * tolerance.mm());
		List<Contour> contours = new ArrayList<>();
		for (Loop loop : loops) {
			Contour curved = curves.contour(loop, monitor);
			Contour contour = shortSegments.removedFrom(inwards ? curved.reversed() : curved);
			if (!isSpeck(contour)) {
				contours.add(contour);
			}
		}
		if (!ContactFinder.contacts(contours, CHECKED_AT * tolerance.mm(), monitor).isEmpty()) {
			return Optional.empty();
		}
		return PieceAssembler.assembled(contours, monitor).map(Region::new);
	}

	private boolean isSpeck(Contour contour) {
		double width = SPECK * tolerance.mm();
		return Math.abs(contour.signedArea()) < Math.PI / 4 * width * width;
	}
}
