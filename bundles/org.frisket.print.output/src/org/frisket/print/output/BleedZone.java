package org.frisket.print.output;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;

/**
 * Where art goes on beyond the cut, so that a blade that is a little off leaves no bare rim. Only where art reaches the cut:
 * a border that was left bare stays bare, and nothing is added inside of what is cut out.
 */
final class BleedZone {

	/** Art that ends nearer to a cut than this is meant to reach it, mm; a choice of ours. */
	private static final double REACHES = 0.2;
	/** So that the limit of the zone is the distance from the cut, not that from the end of the art. */
	private static final double AMPLE = 2;

	private final Region pieces;
	private final Region limit;
	private final double width;
	private final Tolerance tolerance;
	private final Monitor monitor;
	private final RegionBoolean regions = new RegionBoolean();

	/** @param pieces what is cut out, one region @param width of the bleed, mm */
	BleedZone(Region pieces, double width, Tolerance tolerance, Monitor monitor) {
		this.pieces = pieces;
		this.width = width;
		this.tolerance = tolerance;
		this.monitor = monitor;
		limit = pieces.isEmpty() || width <= 0 ? Region.EMPTY : grown(pieces, width);
	}

	/** Beyond the cut; empty where art does not reach it. @param keptOff regions that it must not run into */
	Region of(Region art, List<Region> keptOff) {
		if (limit.isEmpty() || art.isEmpty()) {
			return Region.EMPTY;
		}
		Region contact = regions.subtract(grown(art, REACHES), pieces, tolerance, monitor);
		if (contact.isEmpty()) {
			return Region.EMPTY;
		}
		Region near = regions.intersect(grown(contact, AMPLE * width), limit, tolerance, monitor);
		Region zone = regions.subtract(near, pieces, tolerance, monitor);
		Bounds bounds = zone.bounds();
		for (Region each : keptOff) {
			if (bounds.intersects(each.bounds())) {
				zone = regions.subtract(zone, each, tolerance, monitor);
			}
		}
		return zone;
	}

	/** Whether it would run into a region, were it not kept off. */
	boolean reaches(Region other) {
		return limit.bounds().intersects(other.bounds())
				&& regions.intersect(limit, other, tolerance, monitor).area() > tolerance.mm() * width;
	}

	/** With sharp corners, as far as they are not too sharp. */
	private Region grown(Region region, double by) {
		return Offset.of(region, by, Corners.MITRE, Holes.KEEP, tolerance, monitor);
	}

	static Region rectangle(Bounds box) {
		return new Region(List.of(new Piece(Contour.polygon(List.of(new Point(box.minX(), box.minY()),
				new Point(box.minX(), box.maxY()), new Point(box.maxX(), box.maxY()), new Point(box.maxX(), box.minY()))),
				List.of())));
	}
}
