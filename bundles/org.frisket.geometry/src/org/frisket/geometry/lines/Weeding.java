package org.frisket.geometry.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.offset.PolygonOffset;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Lines that are cut into the waste about parts so that it comes off easily: a box around all of them, lines between
 * neighbours, and strips across. They keep off the parts.
 *
 * @param margin    of the box from the parts in mm, positive
 * @param between   whether parts are told apart by straight lines from edge to edge, first across or upright through all
 *                  of them, then through what lies on either side, as long as there is a gap to go through
 * @param spacing   widest strip in mm; lines at even steps across the box make them. 0 for none
 * @param clearance from the parts in mm that every line keeps, not below 0
 */
public record Weeding(double margin, boolean between, double spacing, double clearance) {

	/** More than anybody pulls off. */
	private static final int MOST_STRIPS = 2_000;

	/** @throws IllegalArgumentException if a value is out of range */
	public Weeding {
		if (!(margin > 0 && spacing >= 0 && clearance >= 0) || !Double.isFinite(margin + spacing + clearance)) {
			throw new IllegalArgumentException(
					"weed lines with a margin of " + margin + ", a spacing of " + spacing + " and a clearance of "
							+ clearance);
		}
	}

	/**
	 * The box first, counter-clockwise to the viewer, then the lines between parts, then the strips from the top down.
	 *
	 * @return nothing for an empty region
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public List<Contour> of(Region region, Tolerance tolerance, Monitor monitor) {
		if (region.isEmpty()) {
			return List.of();
		}
		Bounds box = region.bounds().grown(margin);
		List<Contour> lines = new ArrayList<>();
		lines.add(Contour.polygon(List.of(new Point(box.minX(), box.minY()), new Point(box.minX(), box.maxY()),
				new Point(box.maxX(), box.maxY()), new Point(box.maxX(), box.minY()))));
		if (between) {
			List<Bounds> parts = region.pieces().stream().map(piece -> piece.bounds().grown(clearance)).toList();
			part(parts, box, lines);
		}
		if (spacing > 0 && box.height() > spacing) {
			strips(region, box, tolerance, monitor, lines);
		}
		return lines;
	}

	/** Through the widest of all gaps from edge to edge of the box, and so on within both halves. */
	private static void part(List<Bounds> parts, Bounds box, List<Contour> lines) {
		Gap across = Gap.widest(parts, false);
		Gap upright = Gap.widest(parts, true);
		Gap gap = upright != null && (across == null || upright.width >= across.width) ? upright : across;
		if (gap == null) {
			return;
		}
		double at = gap.middle;
		boolean isUpright = gap == upright;
		lines.add(Contour.open(List.of(isUpright ? new Line(new Point(at, box.minY()), new Point(at, box.maxY()))
				: new Line(new Point(box.minX(), at), new Point(box.maxX(), at)))));
		part(parts.stream().filter(p -> (isUpright ? p.minX() : p.minY()) < at).toList(),
				isUpright ? new Bounds(box.minX(), box.minY(), at, box.maxY())
						: new Bounds(box.minX(), box.minY(), box.maxX(), at),
				lines);
		part(parts.stream().filter(p -> (isUpright ? p.minX() : p.minY()) >= at).toList(),
				isUpright ? new Bounds(at, box.minY(), box.maxX(), box.maxY())
						: new Bounds(box.minX(), at, box.maxX(), box.maxY()),
				lines);
	}

	/** A stretch of one axis that no part lies in. */
	private record Gap(double middle, double width) {

		/** The first of the widest; null if there is none. */
		static Gap widest(List<Bounds> parts, boolean upright) {
			List<Bounds> sorted = parts.stream()
					.sorted(Comparator.comparingDouble(p -> upright ? p.minX() : p.minY())).toList();
			Gap widest = null;
			double reached = Double.POSITIVE_INFINITY;
			for (Bounds part : sorted) {
				double from = upright ? part.minX() : part.minY();
				if (from > reached && (widest == null || from - reached > widest.width)) {
					widest = new Gap((from + reached) / 2, from - reached);
				}
				double to = upright ? part.maxX() : part.maxY();
				reached = reached == Double.POSITIVE_INFINITY ? to : Math.max(reached, to);
			}
			return widest;
		}
	}

	private void strips(Region region, Bounds box, Tolerance tolerance, Monitor monitor, List<Contour> lines) {
		int strips = (int) Math.min(MOST_STRIPS, Math.ceil(box.height() / spacing * (1 - 1e-12)));
		LineString[] across = new LineString[strips - 1];
		for (int i = 1; i < strips; i++) {
			double y = box.minY() + box.height() * i / strips;
			across[i - 1] = Polygons.factory().createLineString(
					new Coordinate[] { new Coordinate(box.minX(), y), new Coordinate(box.maxX(), y) });
		}
		Geometry parts = Polygons.of(region, tolerance.mm() / 2);
		monitor.check();
		Geometry kept = clearance > 0 ? PolygonOffset.round(parts, clearance, tolerance.mm() / 2) : parts;
		monitor.check();
		Geometry free = OverlayNGRobust.overlay(Polygons.factory().createMultiLineString(across), kept,
				OverlayNG.DIFFERENCE);
		List<Line> found = new ArrayList<>();
		for (int i = 0; i < free.getNumGeometries(); i++) {
			if (free.getGeometryN(i) instanceof LineString line && line.getLength() > tolerance.mm()) {
				Coordinate a = line.getCoordinateN(0);
				Coordinate b = line.getCoordinateN(line.getNumPoints() - 1);
				Line one = new Line(new Point(a.x, a.y), new Point(b.x, b.y));
				found.add(a.x <= b.x ? one : one.reversed());
			}
		}
		found.sort(Comparator.comparingDouble((Line line) -> line.start().y()).thenComparingDouble(l -> l.start().x()));
		found.forEach(line -> lines.add(Contour.open(List.of(line))));
	}
}
