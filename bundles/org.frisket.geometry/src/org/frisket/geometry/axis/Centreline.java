package org.frisket.geometry.axis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;

/**
 * The lines a hand would draw to write a shape with one stroke of the pen: its medial axis without the branches that
 * only reach for corners, with straight ways through where strokes cross, and led on to the ends of the strokes. A blot
 * that has no strokes becomes a ring halfway in.
 */
public final class Centreline {

	/** Samples a mean width of the strokes. */
	private static final double SAMPLES = 16;

	private Centreline() {
	}

	/**
	 * Open lines, and closed ones where a stroke runs back into itself; from the left to the right by their left ends.
	 *
	 * @param inset how far before the end of a stroke a line ends, in mm: half of what the pen draws
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static List<Contour> of(Region region, double inset, Tolerance tolerance, Monitor monitor) {
		List<Contour> lines = new ArrayList<>();
		int done = 0;
		for (Piece piece : region.pieces()) {
			monitor.check();
			lines.addAll(of(piece, inset, tolerance, monitor));
			monitor.worked((double) ++done / region.pieces().size());
		}
		lines.sort(Comparator.comparingDouble((Contour line) -> line.bounds().minX())
				.thenComparingDouble(line -> line.bounds().minY()).thenComparingDouble(Contour::length));
		return lines;
	}

	private static List<Contour> of(Piece piece, double inset, Tolerance tolerance, Monitor monitor) {
		double perimeter = piece.contours().stream().mapToDouble(Contour::length).sum();
		// twice the area over the perimeter is the width of a long strip, and a little less for a short one
		double spacing = Math.max(2 * piece.area() / perimeter / SAMPLES, tolerance.mm() / 2);
		List<Stroke> strokes = StrokePruning.pruned(MedialAxis.strokes(piece, spacing, monitor));
		if (isBlot(strokes)) {
			return Blot.ring(piece, tolerance).map(List::of).orElse(List.of());
		}
		return new StrokeDrawing(strokes, new StrokeEnds(piece, spacing, inset)).lines(tolerance);
	}

	private static boolean isBlot(List<Stroke> strokes) {
		return strokes.isEmpty()
				|| strokes.size() == 1 && strokes.get(0).from() != strokes.get(0).to()
						&& strokes.get(0).length() < Math.max(strokes.get(0).first().radius(),
								strokes.get(0).last().radius());
	}
}
