package org.frisket.impose.fit;

import java.util.List;

import org.frisket.impose.shape.Convex;

/** The edges of convex polygons, one polygon after the other, as lines with the unit normal that points outwards. */
final class Edges {

	/** From which edge on the polygons' are, and where the last one's end. */
	final int[] from;
	final double[] x;
	final double[] y;
	final double[] toX;
	final double[] toY;
	final double[] normalX;
	final double[] normalY;
	/** The distance of the line from the origin, along the normal. */
	final double[] offset;

	/** @param slack by how much the lines lie outside of the polygons' own */
	Edges(List<Convex> polygons, double slack) {
		int count = polygons.stream().mapToInt(Convex::size).sum();
		from = new int[polygons.size() + 1];
		x = new double[count];
		y = new double[count];
		toX = new double[count];
		toY = new double[count];
		normalX = new double[count];
		normalY = new double[count];
		offset = new double[count];
		int at = 0;
		for (int k = 0; k < polygons.size(); k++) {
			Convex polygon = polygons.get(k);
			from[k] = at;
			for (int i = 0; i < polygon.size(); i++) {
				int j = i + 1 == polygon.size() ? 0 : i + 1;
				double dx = polygon.x(j) - polygon.x(i);
				double dy = polygon.y(j) - polygon.y(i);
				double length = Math.sqrt(dx * dx + dy * dy);
				if (length == 0) {
					continue;
				}
				normalX[at] = dy / length;
				normalY[at] = -dx / length;
				x[at] = polygon.x(i) + slack * normalX[at];
				y[at] = polygon.y(i) + slack * normalY[at];
				toX[at] = polygon.x(j) + slack * normalX[at];
				toY[at] = polygon.y(j) + slack * normalY[at];
				offset[at] = normalX[at] * x[at] + normalY[at] * y[at];
				at++;
			}
		}
		from[polygons.size()] = at;
	}

	int size() {
		return from[from.length - 1];
	}

	int polygons() {
		return from.length - 1;
	}

	/** How far a point is within the line of an edge; negative outside. */
	double within(int edge, double px, double py) {
		return offset[edge] - normalX[edge] * px - normalY[edge] * py;
	}
}
