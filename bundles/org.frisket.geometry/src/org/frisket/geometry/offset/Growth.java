package org.frisket.geometry.offset;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;
import org.frisket.geometry.internal.outset.Quarters;
import org.locationtech.jts.geom.Geometry;

/**
 * Round outward offsets of one region as polygons, where they cannot be made on the curves: all within a distance of any
 * of its pieces. Each piece is grown for itself, and what grows together is united quarter by quarter of the plane, so
 * that where one piece is another than before, all the rest is known. The result depends on the pieces alone. Safe for
 * several threads.
 */
final class Growth {

	private final Region region;
	private final double sampling;
	private final Memory memory;
	private final Map<Piece, PieceGrowth> growths = new HashMap<>();

	/** @param sampling how far in mm flattening may go from the curves, and all arcs together from the truth */
	Growth(Region region, double sampling, Memory memory) {
		this.region = region;
		this.sampling = sampling;
		this.memory = memory;
	}

	/**
	 * Everything within a distance above 0.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	Geometry by(double distance, Monitor monitor) {
		return grown(new Quarters(region.pieces()), distance, monitor);
	}

	private Geometry grown(Quarters part, double distance, Monitor monitor) {
		record Key(List<Piece> pieces, double distance, double sampling) {
		}
		return memory.get(new Key(part.pieces(), distance, sampling), () -> {
			monitor.check();
			if (part.pieces().size() == 1) {
				return growth(part.pieces().get(0)).by(distance, monitor);
			}
			Geometry sum = null;
			for (Quarters each : part.parted()) {
				Geometry grown = grown(each, distance, monitor);
				monitor.check();
				sum = sum == null ? grown : PolygonUnion.of(sum, grown);
			}
			return sum;
		});
	}

	private synchronized PieceGrowth growth(Piece piece) {
		return growths.computeIfAbsent(piece, key -> new PieceGrowth(key, sampling, memory));
	}
}
