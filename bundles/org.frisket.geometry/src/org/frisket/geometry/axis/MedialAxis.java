package org.frisket.geometry.axis;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;

/**
 * The places inside a shape that have more than one nearest place on its boundary (Blum 1967), each with the radius of
 * its disc. Found from samples of the boundary: places are right to about a quarter of the square of the spacing over
 * the width of the stroke, ends to about the spacing.
 */
public record MedialAxis(List<AxisBranch> branches) {

	/** Branches that reach for a bump blunter than about 155 degrees are left out. */
	private static final double LEAST_ANGLE = Math.toRadians(25);

	public MedialAxis {
		branches = List.copyOf(branches);
	}

	/**
	 * @param spacing the largest distance in mm of samples on the boundary; finer than an eighth of the thinnest stroke
	 *            serves
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static MedialAxis of(Piece piece, double spacing, Monitor monitor) {
		return new MedialAxis(strokes(piece, spacing, monitor).stream().map(MedialAxis::branch).toList());
	}

	static List<Stroke> strokes(Piece piece, double spacing, Monitor monitor) {
		AxisGraph graph = VoronoiAxis.of(piece, spacing, monitor);
		graph.burn(LEAST_ANGLE);
		return Crumbs.without(graph.strokes());
	}

	private static AxisBranch branch(Stroke stroke) {
		boolean ring = stroke.from() == stroke.to();
		return new AxisBranch(ring ? stroke.points().subList(0, stroke.points().size() - 1) : stroke.points(), ring);
	}

	/** Of all branches, in mm. */
	public double length() {
		return branches.stream().mapToDouble(AxisBranch::length).sum();
	}
}
