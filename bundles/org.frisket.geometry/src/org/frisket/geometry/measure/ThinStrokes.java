package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;

/** The strokes of a region that are too thin, as {@link StrokeWidths} finds them. */
public final class ThinStrokes {

	private ThinStrokes() {
	}

	/**
	 * All places narrower than {@code width}, the narrowest first.
	 *
	 * @param width  in mm, positive
	 * @param memory of pieces that may be alike, in this region or in others
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static List<StrokeWidths.Width> of(Region region, double width, Tolerance tolerance, Memory memory,
			Monitor monitor) {
		record Key(Likeness piece, double width, Tolerance tolerance) {
		}
		List<StrokeWidths.Width> places = new ArrayList<>();
		int done = 0;
		for (Piece piece : region.pieces()) {
			monitor.check();
			Point origin = piece.outer().start();
			// where a piece lies must not show in what is found in those that are alike
			List<StrokeWidths.Width> found = memory.get(new Key(Likeness.of(piece), width, tolerance),
					() -> StrokeWidths.of(new Region(List.of(piece))
							.transformed(Transform.translation(-origin.x(), -origin.y())).pieces().get(0), tolerance, monitor)
							.thinnerThan(width, tolerance));
			found.forEach(place -> places.add(new StrokeWidths.Width(place.mm(), place.place().plus(origin))));
			monitor.worked((double) ++done / region.pieces().size());
		}
		places.sort(Comparator.comparingDouble(StrokeWidths.Width::mm).thenComparingDouble(p -> p.place().y())
				.thenComparingDouble(p -> p.place().x()));
		return places;
	}
}
