package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.Remarks;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Cuts shapes at the edge of a region. All is in mm. */
final class Clipping {

	private static final Tolerance TOLERANCE = new Tolerance(0.005);

	private final Monitor monitor;
	private final Remarks remarks;
	private final OutlineCleaner cleaner = new OutlineCleaner();
	private final RegionBoolean booleans = new RegionBoolean();

	Clipping(Monitor monitor, Remarks remarks) {
		this.monitor = monitor;
		this.remarks = remarks;
	}

	Region region(Outline outline, FillRule rule) {
		return cleaner.clean(outline, rule, TOLERANCE, monitor).region();
	}

	Region union(List<Region> regions) {
		return booleans.union(regions, TOLERANCE, monitor);
	}

	Region subtract(Region from, Region what) {
		return booleans.subtract(from, what, TOLERANCE, monitor);
	}

	Region intersect(Region one, Region other) {
		return booleans.intersect(one, other, TOLERANCE, monitor);
	}

	/** Those shapes, or parts of them, that lie in the clip. Pictures stay whole if any of them may lie there. */
	List<ImportedShape> clipped(List<ImportedShape> shapes, Region clip, Node node) {
		List<ImportedShape> kept = new ArrayList<>();
		Bounds box = box(clip);
		for (ImportedShape shape : shapes) {
			if (shape instanceof ImportedShape.Area area) {
				area(area, clip, box, kept);
			} else if (shape instanceof ImportedShape.Lines lines) {
				lines(lines, clip, box, node, kept);
			} else {
				kept.add(shape);
			}
		}
		return kept;
	}

	/** The box that a region fills; empty if it is not one upright box. */
	private static Bounds box(Region clip) {
		Bounds bounds = clip.bounds();
		boolean box = clip.pieces().size() == 1
				&& Math.abs(clip.area() - bounds.width() * bounds.height()) <= 1e-9 * clip.area();
		return box ? bounds.grown(TOLERANCE.mm()) : Bounds.EMPTY;
	}

	private static boolean within(Bounds inner, Bounds outer) {
		return outer.contains(new Point(inner.minX(), inner.minY())) && outer.contains(new Point(inner.maxX(), inner.maxY()));
	}

	private void area(ImportedShape.Area area, Region clip, Bounds box, List<ImportedShape> kept) {
		if (within(area.outline().bounds(), box)) {
			kept.add(area);
			return;
		}
		Region cut = intersect(region(area.outline(), area.rule()), clip);
		if (!cut.isEmpty()) {
			kept.add(new ImportedShape.Area(area.name(), cut.toOutline(), FillRule.NON_ZERO, area.colour(), area.quantity()));
		}
	}

	private void lines(ImportedShape.Lines lines, Region clip, Bounds box, Node node, List<ImportedShape> kept) {
		if (within(lines.outline().bounds(), box)) {
			kept.add(lines);
			return;
		}
		Geometry inside = Polygons.of(clip, TOLERANCE.mm() / 2);
		List<Contour> contours = new ArrayList<>();
		for (Contour contour : lines.outline().contours()) {
			Geometry line = line(contour, inside.getFactory());
			if (inside.covers(line)) {
				contours.add(contour);
			} else if (inside.intersects(line)) {
				remarks.once(node.place(), NLS.bind(Messages.Clipping_line, TOLERANCE.mm()));
				Geometry cut = line.intersection(inside);
				for (int i = 0; i < cut.getNumGeometries(); i++) {
					if (cut.getGeometryN(i) instanceof LineString part && part.getLength() > 0) {
						contours.add(open(part));
					}
				}
			}
		}
		if (!contours.isEmpty()) {
			kept.add(new ImportedShape.Lines(lines.name(), new Outline(contours), lines.width(), lines.colour(),
					lines.quantity()));
		}
	}

	private static Geometry line(Contour contour, GeometryFactory factory) {
		List<Point> points = new ArrayList<>(contour.flattened(TOLERANCE.mm()));
		if (contour.isClosed()) {
			points.add(points.get(0));
		}
		return factory.createLineString(
				points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
	}

	private static Contour open(LineString line) {
		List<Line> parts = new ArrayList<>();
		Coordinate[] c = line.getCoordinates();
		for (int i = 1; i < c.length; i++) {
			parts.add(new Line(new Point(c[i - 1].x, c[i - 1].y), new Point(c[i].x, c[i].y)));
		}
		return Contour.open(parts);
	}
}
