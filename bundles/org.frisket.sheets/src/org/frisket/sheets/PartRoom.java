package org.frisket.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.prepare.PreparedElement;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What a part takes up: the pieces that are cut round, with their holes, and what is drawn or printed beyond them. Where
 * nothing is cut it is the box of the lines.
 *
 * @param contact whether pieces overlap or touch each other
 */
record PartRoom(List<Atom> atoms, boolean contact, Tolerance tolerance, Monitor monitor) {

	/** In mm, round a line that lies outside of what is cut: half of a broad pen. Common practice, no source. */
	private static final double PEN = 0.5;

	Region region() {
		List<Atom> roots = atoms.stream().filter(atom -> atom.isCut() && !atom.enclosed).toList();
		if (roots.isEmpty()) {
			return box(atoms.stream().map(atom -> atom.bounds).reduce(Bounds.EMPTY, Bounds::with).grown(PEN));
		}
		Map<PreparedElement, List<Piece>> pieces = new LinkedHashMap<>();
		roots.forEach(atom -> pieces.computeIfAbsent(atom.element, each -> new ArrayList<>()).add(atom.piece));
		List<Region> regions = new ArrayList<>();
		pieces.values().forEach(own -> regions.add(new Region(own)));
		boolean unite = contact && regions.size() > 1;
		List<Region> beyond = beyond(roots);
		if (unite || !beyond.isEmpty()) {
			regions.addAll(beyond);
			return new RegionBoolean().union(regions, tolerance, monitor);
		}
		return regions.size() == 1 ? regions.get(0)
				: new Region(roots.stream().map(atom -> atom.piece)
						.sorted(Comparator.comparingDouble((Piece piece) -> piece.bounds().minY())
								.thenComparingDouble(piece -> piece.bounds().minX()))
						.toList());
	}

	private List<Region> beyond(List<Atom> roots) {
		List<Region> beyond = new ArrayList<>();
		Geometry covered = null;
		for (Atom atom : atoms) {
			if (atom.isCut() || atom.enclosed) {
				continue;
			}
			if (atom.kind == Atom.Kind.PRINT) {
				beyond.add(new Region(List.of(atom.piece)));
				continue;
			}
			if (covered == null) {
				covered = OverlayNGRobust.union(roots.stream().map(Atom::geometry).toList());
			}
			Geometry outside = OverlayNGRobust.overlay(atom.geometry(), covered, OverlayNG.DIFFERENCE);
			if (!outside.isEmpty()) {
				beyond.add(Polygons.toRegion(outside.buffer(PEN)));
			}
		}
		return beyond;
	}

	static Region box(Bounds box) {
		return new Region(List.of(new Piece(Contour.polygon(List.of(new Point(box.minX(), box.minY()),
				new Point(box.minX(), box.maxY()), new Point(box.maxX(), box.maxY()), new Point(box.maxX(), box.minY()))),
				List.of())));
	}
}
