package org.frisket.geometry.offset;

import java.util.Optional;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.PieceAssembler;
import org.frisket.geometry.internal.outset.CurveGrowth;
import org.locationtech.jts.geom.Geometry;

/**
 * Offsets of one region at several distances. Each is what {@link Offset#of} gives, but what they have in common is
 * worked out once. Safe for several threads.
 */
public final class Offsets {

	private final Region region;
	private final Tolerance tolerance;
	private final double sampling;
	private final CurveGrowth curveGrowth;
	private final Growth growth;
	private final Memory curves;

	public Offsets(Region region, Tolerance tolerance) {
		this(region, tolerance, Memory.NONE, Memory.NONE);
	}

	/**
	 * Of a region that has parts in common with others. The result is the same whatever is remembered.
	 *
	 * @param parts  memory of parts that were grown, a few for each piece and distance
	 * @param curves memory of stretches of edge that were given curves, many for each piece and distance, but small
	 */
	public Offsets(Region region, Tolerance tolerance, Memory parts, Memory curves) {
		this.region = region;
		this.tolerance = tolerance;
		this.curves = curves;
		sampling = Offset.sampling(tolerance);
		curveGrowth = new CurveGrowth(region, tolerance, parts);
		growth = new Growth(region, sampling, parts);
	}

	/**
	 * @param distance in mm, inwards if negative; 0 changes nothing but the holes
	 * @return empty if nothing is left
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public Region at(double distance, Corners corners, Holes holes, Monitor monitor) {
		if (region.isEmpty() || distance == 0 && holes == Holes.KEEP) {
			return region;
		}
		if (distance == 0) {
			return PieceAssembler.filled(region, monitor);
		}
		if (corners instanceof Corners.Round) {
			Optional<Region> curved = curved(distance, holes, monitor);
			if (curved.isPresent()) {
				return curved.get();
			}
		}
		Geometry result = polygons(distance, corners, holes, monitor);
		monitor.check();
		return Offset.fitted(holes == Holes.FILL ? PolygonOffset.filled(result) : result, tolerance, curves, monitor);
	}

	/** Nothing where edges of the result touch or nearly do. */
	private Optional<Region> curved(double distance, Holes holes, Monitor monitor) {
		if (holes == Holes.FILL && distance < 0) {
			return new CurveGrowth(PieceAssembler.filled(region, monitor), tolerance, Memory.NONE).by(distance, monitor);
		}
		Optional<Region> moved = curveGrowth.by(distance, monitor);
		return holes == Holes.FILL ? moved.map(grown -> PieceAssembler.filled(grown, monitor)) : moved;
	}

	private Geometry polygons(double distance, Corners corners, Holes holes, Monitor monitor) {
		boolean fillFirst = holes == Holes.FILL && distance < 0;
		if (!(corners instanceof Corners.Round)) {
			return new SharpOffset(distance, corners, sampling).of(region, fillFirst);
		}
		if (distance > 0) {
			return growth.by(distance, monitor);
		}
		Geometry flattened = Polygons.of(region, sampling);
		return PolygonOffset.round(fillFirst ? PolygonOffset.filled(flattened) : flattened, distance, sampling);
	}
}
