package org.frisket.geometry.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.internal.CanonicalOrder;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Gives curves back to polygons that came from flattened curves. Each contour is fitted on its own; those that then
 * touch or cross are fitted closer and closer, and in the end keep the polygon's edges. Segments shorter than one and a
 * half of the tolerance are taken out unless that brings contours into contact.
 */
public final class RegionFitter {

	private static final double[] SHARES = { 1, 0.4, 0.15, 0.05 };
	private static final double SHORTEST = 1.5;
	private static final double CHECKED_AT = 0.01;

	private final Tolerance tolerance;
	private final double sampling;
	private final double cornerAngle;
	private final Memory memory;

	/**
	 * @param tolerance how far the curves may lie from the polygons
	 * @param sampling how far in mm the polygons may lie from the curves they stand for
	 */
	public RegionFitter(Tolerance tolerance, double sampling) {
		this(tolerance, sampling, CurveFitter.DEFAULT_CORNER_ANGLE);
	}

	/** @param cornerAngle see {@link CurveFitter#CurveFitter(Tolerance, double, double)} */
	public RegionFitter(Tolerance tolerance, double sampling, double cornerAngle) {
		this(tolerance, sampling, cornerAngle, Memory.NONE);
	}

	private RegionFitter(Tolerance tolerance, double sampling, double cornerAngle, Memory memory) {
		this.tolerance = tolerance;
		this.sampling = sampling;
		this.cornerAngle = cornerAngle;
		this.memory = memory;
	}

	/** The same one, but what it has fitted to a stretch between two corners is remembered. */
	public RegionFitter remembering(Memory stretches) {
		return new RegionFitter(tolerance, sampling, cornerAngle, stretches);
	}

	/**
	 * The region of the polygons in a geometry. Rings too small to hold a disc as wide as the tolerance are dropped.
	 *
	 * @param polygonal valid in the sense of JTS; where its rings touch at a point they are parted there by less than
	 *            the tolerance
	 */
	public Region fit(Geometry polygonal, Monitor monitor) {
		Region dense = withoutSpecks(Polygons.toRegion(polygonal));
		if (!ContactFinder.contacts(dense.contours(), tolerance.mm(), monitor).isEmpty()) {
			dense = withoutSpecks(Polygons.toRegion(parted(polygonal)));
		}
		List<Contour> contours = dense.contours();
		List<Contour> fitted = new ArrayList<>(contours);
		BitSet open = new BitSet();
		open.set(0, contours.size());
		for (int attempt = 0; attempt < SHARES.length && !open.isEmpty(); attempt++) {
			CurveFitter fitter = new CurveFitter(tolerance.share(SHARES[attempt]), sampling, cornerAngle, memory, monitor);
			for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
				monitor.check();
				fitted.set(i, fit(fitter, contours.get(i)));
			}
			open = ContactFinder.contacts(fitted, CHECKED_AT * tolerance.mm(), monitor);
			for (int i = 0; i < fitted.size(); i++) {
				monitor.check();
				if (SpikeCheck.sidesChangedPlaces(fitted.get(i), contours.get(i),
						SHORTEST * tolerance.mm())) {
					open.set(i);
				}
			}
		}
		keepPolygons(open, contours, fitted, monitor);
		return assembled(dense, fitted);
	}

	/** Thinned out if that makes no contact, else as they are. */
	private void keepPolygons(BitSet open, List<Contour> polygons, List<Contour> fitted, Monitor monitor) {
		Thinning thinning = new Thinning(CHECKED_AT * tolerance.mm());
		for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
			monitor.check();
			fitted.set(i, Contour.polygon(thinning.ring(points(polygons.get(i)))));
		}
		BitSet touching = open.isEmpty() ? open
				: ContactFinder.contacts(fitted, CHECKED_AT * tolerance.mm(), monitor);
		for (int i = touching.nextSetBit(0); i >= 0; i = touching.nextSetBit(i + 1)) {
			fitted.set(i, polygons.get(i));
		}
	}

	private static List<Point> points(Contour polygon) {
		return polygon.segments().stream().map(Segment::start).toList();
	}

	private Contour fit(CurveFitter fitter, Contour polygon) {
		Contour fitted = new ShortSegments(SHORTEST * tolerance.mm())
				.removedFrom(fitter.fitRing(points(polygon)));
		return fitted.signedArea() * polygon.signedArea() > 0 ? fitted : polygon;
	}

	/** Shrunk by far less than the tolerance, which opens contacts at points. */
	private Geometry parted(Geometry polygonal) {
		BufferParameters parameters = new BufferParameters();
		parameters.setJoinStyle(BufferParameters.JOIN_MITRE);
		parameters.setSimplifyFactor(1e-4);
		return BufferOp.bufferOp(polygonal, -tolerance.mm() / 50, parameters);
	}

	private Region withoutSpecks(Region region) {
		List<Piece> pieces = new ArrayList<>();
		for (Piece piece : region.pieces()) {
			if (!isSpeck(piece.outer())) {
				pieces.add(new Piece(piece.outer(), piece.holes().stream().filter(h -> !isSpeck(h)).toList()));
			}
		}
		return new Region(pieces);
	}

	private boolean isSpeck(Contour polygon) {
		return Math.abs(polygon.signedArea()) < Math.PI / 4 * tolerance.mm() * tolerance.mm();
	}

	private static Region assembled(Region dense, List<Contour> fitted) {
		List<Piece> pieces = new ArrayList<>();
		int next = 0;
		for (Piece piece : dense.pieces()) {
			int holes = next + 1 + piece.holes().size();
			pieces.add(new Piece(fitted.get(next), fitted.subList(next + 1, holes)));
			next = holes;
		}
		return new Region(CanonicalOrder.sorted(pieces));
	}
}
