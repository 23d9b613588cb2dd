package org.frisket.geometry.measure;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** The pieces that lie in holes of others. */
public final class Islands {

	private Islands() {
	}

	public static List<Piece> of(Region region, Tolerance tolerance, Monitor monitor) {
		if (region.pieces().size() < 2) {
			return List.of();
		}
		STRtree tree = new STRtree();
		region.pieces().forEach(piece -> tree.insert(envelope(piece.bounds()), piece));
		Set<Piece> islands = new HashSet<>();
		for (Piece piece : region.pieces()) {
			for (Contour hole : piece.holes()) {
				monitor.check();
				PieceLocator inside = null;
				for (Object near : tree.query(envelope(hole.bounds()))) {
					Piece other = (Piece) near;
					if (other != piece && isWithin(other.bounds(), hole.bounds()) && !islands.contains(other)) {
						inside = inside == null ? new PieceLocator(new Piece(hole.reversed(), List.of()), tolerance) : inside;
						if (inside.holds(other.outer().start())) {
							islands.add(other);
						}
					}
				}
			}
		}
		return region.pieces().stream().filter(islands::contains).toList();
	}

	private static Envelope envelope(Bounds bounds) {
		return new Envelope(bounds.minX(), bounds.maxX(), bounds.minY(), bounds.maxY());
	}

	private static boolean isWithin(Bounds box, Bounds around) {
		return box.minX() >= around.minX() && box.maxX() <= around.maxX() && box.minY() >= around.minY()
				&& box.maxY() <= around.maxY();
	}
}
