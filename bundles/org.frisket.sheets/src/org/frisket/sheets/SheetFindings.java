package org.frisket.sheets;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Placement;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What is wrong with how parts lie on a sheet. */
final class SheetFindings {

	private static final int DECIMALS = 2;

	private final LaidSheet sheet;
	private final Tolerance tolerance;
	private final SheetSpace space;
	private final List<Finding> findings = new ArrayList<>();

	private SheetFindings(LaidSheet sheet, Tolerance tolerance) {
		this.sheet = sheet;
		this.tolerance = tolerance;
		space = SheetSpace.of(sheet, tolerance);
	}

	/** In the order of the placements, the missing ones last; places in the frame of the sheet. */
	static List<Finding> of(LaidSheet sheet, Tolerance tolerance, Monitor monitor) {
		SheetFindings found = new SheetFindings(sheet, tolerance);
		for (LaidPart part : sheet.parts()) {
			monitor.check();
			found.edge(part);
			for (LaidPart other : found.space.after(part)) {
				found.pair(part, other);
			}
		}
		sheet.missing().forEach(found::missing);
		return found.findings;
	}

	private void pair(LaidPart one, LaidPart other) {
		Geometry a = space.geometry(one);
		Geometry b = space.geometry(other);
		if (space.overlap(one, other)) {
			overlap(one, other, OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION));
			return;
		}
		double gap = sheet.sheet().getGap();
		Coordinate[] nearest = new IndexedFacetDistance(a).nearestPoints(b);
		double distance = nearest[0].distance(nearest[1]);
		if (distance < gap - tolerance.mm()) {
			findings.add(Finding.measured("parts-too-near", Severity.CAUTION, one.part().element(),
					new Point((nearest[0].x + nearest[1].x) / 2, (nearest[0].y + nearest[1].y) / 2), distance, gap,
					NLS.bind(Messages.SheetFindings_near, new Object[] { one.part().title(), other.part().title(),
							length(distance), length(gap) }),
					Messages.SheetFindings_moveCure));
		}
	}

	private void overlap(LaidPart one, LaidPart other, Geometry common) {
		double width = 0;
		Point place = one.room().bounds().centre();
		for (int i = 0; i < common.getNumGeometries(); i++) {
			if (common.getGeometryN(i) instanceof Polygon part && part.getArea() > 0) {
				LineString radius = MaximumInscribedCircle.getRadiusLine(part,
						Math.max(tolerance.mm(), Math.sqrt(part.getArea()) / 100));
				if (2 * radius.getLength() > width) {
					width = 2 * radius.getLength();
					place = new Point(radius.getCoordinateN(0).x, radius.getCoordinateN(0).y);
				}
			}
		}
		findings.add(Finding.measured("parts-overlap", Severity.BLOCKING, one.part().element(), place, width, 0,
				NLS.bind(Messages.SheetFindings_overlap,
						new Object[] { one.part().title(), other.part().title(), length(width) }),
				Messages.SheetFindings_moveCure));
	}

	private void edge(LaidPart part) {
		Envelope box = space.geometry(part).getEnvelopeInternal();
		Bounds bounds = new Bounds(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
		double edge = SheetSpace.edge(sheet, bounds);
		double margin = sheet.sheet().getMargin();
		if (edge < -tolerance.mm()) {
			findings.add(Finding.measured("part-over-edge", Severity.BLOCKING, part.part().element(), bounds.centre(), edge,
					0, NLS.bind(Messages.SheetFindings_over, part.part().title(), length(-edge)),
					Messages.SheetFindings_inCure));
		} else if (edge < margin - tolerance.mm()) {
			findings.add(Finding.measured("part-in-margin", Severity.CAUTION, part.part().element(), bounds.centre(), edge,
					margin, NLS.bind(Messages.SheetFindings_margin, new Object[] { part.part().title(),
							length(Math.max(0, edge)), length(margin) }),
					Messages.SheetFindings_inCure));
		}
	}

	private void missing(Placement placement) {
		String key = placement.getPart() == null ? "" : placement.getPart();
		findings.add(Finding.plain("part-missing", Severity.CAUTION, SheetPart.elementOf(key),
				new Point(placement.getX(), placement.getY()), NLS.bind(Messages.SheetFindings_missing, key),
				Messages.SheetFindings_missingCure));
	}

	private static String length(double mm) {
		return Figures.length(mm, DECIMALS);
	}
}
