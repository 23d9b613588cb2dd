package org.frisket.geometry.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Combining;
import org.frisket.geometry.lines.Bend;

/**
 * Corners replaced by arcs of a radius that touch both sides; outer corners lose what lies beyond the arc, inner ones
 * are filled. Where a side is too short the arc is as large as half of the side allows. All else stays as it is: thin
 * parts are not lost, as they are by {@link org.frisket.geometry.offset.Offset#opened opening}.
 */
public final class RoundedCorners {

	private static final double ARC_SHARE = 0.25;
	/** What is left of a side may be nothing but rounding, in its parameter. */
	private static final double NOTHING = 1e-9;

	private final double radius;
	private final double tolerance;

	private RoundedCorners(double radius, double tolerance) {
		this.radius = radius;
		this.tolerance = tolerance;
	}

	/**
	 * @param radius in mm; 0 changes nothing
	 * @throws IllegalArgumentException if the radius is negative or not finite
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Region of(Region region, double radius, Tolerance tolerance, Monitor monitor) {
		if (!(radius >= 0) || !Double.isFinite(radius)) {
			throw new IllegalArgumentException("corners with a radius of " + radius);
		}
		if (radius < tolerance.mm()) {
			return region;
		}
		RoundedCorners rounded = new RoundedCorners(radius, tolerance.mm());
		List<Region> pieces = new ArrayList<>();
		for (Piece piece : region.pieces()) {
			monitor.check();
			Region outer = alone(rounded.of(piece.outer()));
			List<Region> parts = new ArrayList<>(List.of(outer));
			piece.holes().forEach(hole -> parts.add(alone(rounded.of(hole).reversed())));
			// an arc may have come to a hole, or to a neighbour
			pieces.add(Combining.SUBTRACT.of(parts, tolerance, monitor));
		}
		pieces.add(Region.EMPTY);
		return Combining.UNITE.of(pieces, tolerance, monitor);
	}

	private static Region alone(Contour contour) {
		return new Region(List.of(new Piece(contour, List.of())));
	}

	/** An open line with its corners rounded; its ends stay. */
	public static Contour ofLine(Contour line, double radius, Tolerance tolerance) {
		return radius < tolerance.mm() ? line : new RoundedCorners(radius, tolerance.mm()).of(line);
	}

	private Contour of(Contour contour) {
		List<Segment> sides = contour.segments();
		int count = sides.size();
		// the corner at the end of each side
		boolean[] corner = new boolean[count];
		for (int i = 0; i < count; i++) {
			corner[i] = (contour.isClosed() || i < count - 1) && Bend.isCorner(sides.get(i), sides.get((i + 1) % count));
		}
		double[] from = new double[count];
		double[] to = new double[count];
		List<Optional<Fillet>> fillets = new ArrayList<>();
		java.util.Arrays.fill(to, 1);
		for (int i = 0; i < count; i++) {
			int next = (i + 1) % count;
			Optional<Fillet> fillet = !corner[i] ? Optional.empty()
					: Fillet.between(sides.get(i), sides.get(next), radius, corner[(i + count - 1) % count] ? 0.5 : 0,
							corner[next] ? 0.5 : 1, tolerance);
			fillets.add(fillet);
			if (fillet.isPresent()) {
				to[i] = fillet.get().leaves();
				from[next] = fillet.get().arrives();
			}
		}
		return rounded(contour, fillets, from, to);
	}

	private Contour rounded(Contour contour, List<Optional<Fillet>> fillets, double[] from, double[] to) {
		List<Segment> sides = contour.segments();
		List<Segment> rounded = new ArrayList<>();
		for (int i = 0; i < sides.size(); i++) {
			if (to[i] - from[i] > NOTHING) {
				rounded.add(sides.get(i).between(from[i], to[i]));
			}
			int next = (i + 1) % sides.size();
			Point end = sides.get(next).at(from[next]);
			Point start = sides.get(i).at(to[i] - from[i] > NOTHING ? to[i] : from[i]);
			fillets.get(i).ifPresent(fillet -> rounded.addAll(fillet.arc(start, end, tolerance * ARC_SHARE)));
		}
		return contour.isClosed() ? Contour.closed(rounded) : Contour.open(rounded);
	}
}
