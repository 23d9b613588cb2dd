package org.frisket.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Shapes for tests. */
public final class Shapes {

	private static final double KAPPA = 4 * (Math.sqrt(2) - 1) / 3;

	private Shapes() {
	}

	/** Four cubics, counter-clockwise to the viewer. */
	public static Contour circle(double x, double y, double radius) {
		double k = KAPPA * radius;
		OutlineBuilder pen = new OutlineBuilder();
		pen.moveTo(new Point(x + radius, y));
		pen.cubicTo(new Point(x + radius, y - k), new Point(x + k, y - radius), new Point(x, y - radius));
		pen.cubicTo(new Point(x - k, y - radius), new Point(x - radius, y - k), new Point(x - radius, y));
		pen.cubicTo(new Point(x - radius, y + k), new Point(x - k, y + radius), new Point(x, y + radius));
		pen.cubicTo(new Point(x + k, y + radius), new Point(x + radius, y + k), new Point(x + radius, y));
		pen.close();
		return pen.build().contours().get(0);
	}

	/** Counter-clockwise to the viewer. */
	public static Contour rectangle(double x, double y, double width, double height) {
		return Contour.polygon(List.of(new Point(x, y), new Point(x, y + height), new Point(x + width, y + height),
				new Point(x + width, y)));
	}

	public static Contour pentagram() {
		List<Point> corners = new ArrayList<>();
		for (int k = 0; k < 5; k++) {
			double angle = Math.toRadians(90 + 144 * k);
			corners.add(new Point(Math.cos(angle), Math.sin(angle)));
		}
		return Contour.polygon(corners);
	}

	public static Point point(Random random, double size) {
		return new Point(random.nextDouble() * size, random.nextDouble() * size);
	}

	public static Cubic cubic(Random random, double size) {
		return new Cubic(point(random, size), point(random, size), point(random, size), point(random, size));
	}

	public static Contour polygon(Random random, int corners, double size) {
		List<Point> points = new ArrayList<>();
		for (int i = 0; i < corners; i++) {
			points.add(point(random, size));
		}
		return Contour.polygon(points);
	}

	/** Corners on whole numbers: much is collinear, doubled or touching. */
	public static Contour latticePolygon(Random random, int corners, int size) {
		List<Point> points = new ArrayList<>();
		for (int i = 0; i < corners; i++) {
			points.add(new Point(random.nextInt(size), random.nextInt(size)));
		}
		return Contour.polygon(points);
	}

	/** Cubics through random places, crossing themselves freely. */
	public static Contour scribble(Random random, int segments, double size) {
		List<Point> points = new ArrayList<>();
		for (int i = 0; i < 3 * segments; i++) {
			points.add(point(random, size));
		}
		return cubics(points);
	}

	/** Cubics round a centre, wobbling, of either winding. */
	public static Contour blob(Random random, int segments, Point centre, double radius) {
		List<Point> points = new ArrayList<>();
		for (int i = 0; i < 3 * segments; i++) {
			double angle = 2 * Math.PI * i / (3 * segments);
			double reach = radius * (0.3 + random.nextDouble());
			points.add(centre.plus(new Point(Math.cos(angle), Math.sin(angle)).times(reach)));
		}
		Contour contour = cubics(points);
		return random.nextBoolean() ? contour : contour.reversed();
	}

	private static Contour cubics(List<Point> points) {
		List<Segment> segments = new ArrayList<>();
		int count = points.size();
		for (int i = 0; i < count; i += 3) {
			segments.add(new Cubic(points.get(i), points.get(i + 1), points.get(i + 2), points.get((i + 3) % count)));
		}
		return Contour.closed(segments);
	}
}
