package org.frisket.print.register;

import java.util.List;

import org.frisket.geometry.Point;

/**
 * How an error of the measured marks goes on into the fit and from there to any place: the covariance of the fit's numbers
 * in the first order. For a similarity it is sigma times the root of 1/n + rho²/S, rho being the distance from the centroid of
 * the marks and S the sum of its squares.
 */
final class MarkPrecision {

	private final FitKind kind;
	private final Projection map;
	private final Point centre;
	private final Point measuredCentre;
	private final double[][] covariance;

	MarkPrecision(FitKind kind, Projection map, List<Point> designed) {
		this.kind = kind;
		this.map = map;
		centre = Marks.centroid(designed);
		measuredCentre = Marks.centroid(designed.stream().map(map::apply).toList());
		double[][] rows = new double[2 * designed.size()][];
		for (int i = 0; i < designed.size(); i++) {
			double[][] both = rows(designed.get(i));
			rows[2 * i] = both[0];
			rows[2 * i + 1] = both[1];
		}
		covariance = LeastSquares.covariance(rows);
	}

	/** Standard error along x and y in the measured frame, for marks with a standard error of 1 along each. */
	Point at(Point place) {
		double[][] rows = rows(place);
		return new Point(root(rows[0]), root(rows[1]));
	}

	private double root(double[] row) {
		double sum = 0;
		for (int i = 0; i < row.length; i++) {
			for (int j = 0; j < row.length; j++) {
				sum += row[i] * covariance[i][j] * row[j];
			}
		}
		return Math.sqrt(Math.max(0, sum));
	}

	/** How x and y of a mapped place change with the numbers of the fit. */
	private double[][] rows(Point place) {
		Point q = map.apply(place).minus(measuredCentre);
		double x = place.x() - centre.x();
		double y = place.y() - centre.y();
		return switch (kind) {
		case RIGID -> new double[][] { { 1, 0, -q.y() }, { 0, 1, q.x() } };
		case SIMILARITY -> new double[][] { { 1, 0, -q.y(), q.x() }, { 0, 1, q.x(), q.y() } };
		case AFFINE -> new double[][] { { x, y, 1, 0, 0, 0 }, { 0, 0, 0, x, y, 1 } };
		case PROJECTIVE -> projective(map, place, centre);
		};
	}

	/** By the numbers of a map whose last one stays as it is, in coordinates round a centre. */
	static double[][] projective(Projection map, Point place, Point centre) {
		double weight = map.weight(place);
		Point to = map.apply(place);
		double x = (place.x() - centre.x()) / weight;
		double y = (place.y() - centre.y()) / weight;
		double one = 1 / weight;
		return new double[][] { { x, y, one, 0, 0, 0, -x * to.x(), -y * to.x() },
				{ 0, 0, 0, x, y, one, -x * to.y(), -y * to.y() } };
	}
}
