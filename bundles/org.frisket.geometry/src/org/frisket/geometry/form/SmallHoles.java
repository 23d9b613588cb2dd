package org.frisket.geometry.form;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Combining;
import org.frisket.geometry.offset.PolygonOffset;

/** Fills the holes of a region that are too small to be cut or weeded, with whatever lies in them. */
public final class SmallHoles {

	private SmallHoles() {
	}

	/**
	 * @param size in mm; a hole is filled unless a disc of this diameter has room in it
	 * @throws IllegalArgumentException if the size is negative or not finite
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Region filled(Region region, double size, Tolerance tolerance, Monitor monitor) {
		if (!(size >= 0) || !Double.isFinite(size)) {
			throw new IllegalArgumentException("holes of " + size + " mm");
		}
		List<Region> pieces = new ArrayList<>();
		boolean changed = false;
		for (Piece piece : region.pieces()) {
			monitor.check();
			List<Contour> kept = piece.holes().stream().filter(hole -> hasRoom(hole, size, tolerance)).toList();
			changed |= kept.size() < piece.holes().size();
			pieces.add(new Region(List.of(new Piece(piece.outer(), kept))));
		}
		return changed ? Combining.UNITE.of(and(pieces, Region.EMPTY), tolerance, monitor) : region;
	}

	/** One piece alone has to be put in order too. */
	private static List<Region> and(List<Region> regions, Region last) {
		regions.add(last);
		return regions;
	}

	private static boolean hasRoom(Contour hole, double size, Tolerance tolerance) {
		double sampling = tolerance.mm() / 8;
		return size == 0 || Math.abs(hole.signedArea()) >= Math.PI / 4 * size * size
				&& Math.min(hole.bounds().width(), hole.bounds().height()) >= size - tolerance.mm()
				&& !PolygonOffset.round(Polygons.factory().createPolygon(Polygons.ring(hole, sampling)),
						-Math.max(0, size - tolerance.mm()) / 2, sampling).isEmpty();
	}
}
