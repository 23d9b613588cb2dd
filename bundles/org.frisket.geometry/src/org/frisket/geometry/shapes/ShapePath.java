package org.frisket.geometry.shapes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;

/**
 * Shapes as SVG path data. Each lies in a box from (0, 0) to (width, height) in mm, y down; the outer contour runs
 * counter-clockwise to the viewer and holes run the other way. Numbers are rounded to a millionth of a millimetre.
 */
public final class ShapePath {

	/** The fewest corners of a polygon and points of a star. */
	public static final int FEWEST_CORNERS = 3;

	private static final int DECIMALS = 6;

	private final StringBuilder data = new StringBuilder();

	private ShapePath() {
	}

	/** @throws IllegalArgumentException unless both lengths are positive and finite */
	public static String rectangle(double width, double height) {
		check(width, height);
		return closed(List.of(new Point(0, 0), new Point(0, height), new Point(width, height), new Point(width, 0)));
	}

	/**
	 * A rectangle with quarter circles for corners.
	 *
	 * @param radius in mm; from 0 to half the shorter side
	 * @throws IllegalArgumentException if a length is out of range
	 */
	public static String roundedRectangle(double width, double height, double radius) {
		check(width, height);
		if (!(radius >= 0 && radius <= Math.min(width, height) / 2)) {
			throw new IllegalArgumentException("a corner radius of " + radius + " mm on " + width + " × " + height);
		}
		if (radius == 0) {
			return rectangle(width, height);
		}
		ShapePath path = new ShapePath();
		path.move(0, radius);
		path.line(0, height - radius);
		path.arc(radius, radius, radius, height);
		path.line(width - radius, height);
		path.arc(radius, radius, width, height - radius);
		path.line(width, radius);
		path.arc(radius, radius, width - radius, 0);
		path.line(radius, 0);
		path.arc(radius, radius, 0, radius);
		return path.close();
	}

	/** @throws IllegalArgumentException unless both lengths are positive and finite */
	public static String ellipse(double width, double height) {
		check(width, height);
		ShapePath path = new ShapePath();
		path.move(width, height / 2);
		path.arc(width / 2, height / 2, 0, height / 2);
		path.arc(width / 2, height / 2, width, height / 2);
		return path.close();
	}

	/**
	 * A polygon with evenly spaced corners on the ellipse that fills the box, the first one at the top; regular if the
	 * box is square.
	 *
	 * @throws IllegalArgumentException if there are fewer than {@value #FEWEST_CORNERS} corners or a length is not
	 *                                  positive and finite
	 */
	public static String polygon(double width, double height, int corners) {
		check(width, height);
		checkCorners(corners);
		List<Point> points = new ArrayList<>();
		for (int i = 0; i < corners; i++) {
			points.add(onEllipse(width, height, (double) i / corners, 1));
		}
		return closed(points);
	}

	/**
	 * A star with one point at the top.
	 *
	 * @param inner how far the hollows lie from the middle, as a share of how far the points do; between 0 and 1
	 * @throws IllegalArgumentException if a value is out of range
	 */
	public static String star(double width, double height, int points, double inner) {
		check(width, height);
		checkCorners(points);
		if (!(inner > 0 && inner < 1)) {
			throw new IllegalArgumentException("a star whose hollows lie at " + inner + " of its points");
		}
		List<Point> corners = new ArrayList<>();
		for (int i = 0; i < 2 * points; i++) {
			corners.add(onEllipse(width, height, i / (2.0 * points), i % 2 == 0 ? 1 : inner));
		}
		return closed(corners);
	}

	/**
	 * A ribbon whose ends are cut to a swallow's tail.
	 *
	 * @param depth of the cut at each end in mm; positive and less than half the width
	 * @throws IllegalArgumentException if a length is out of range
	 */
	public static String banner(double width, double height, double depth) {
		check(width, height);
		if (!(depth > 0 && depth < width / 2)) {
			throw new IllegalArgumentException("a banner " + width + " mm wide, cut in by " + depth + " mm");
		}
		return closed(List.of(new Point(0, 0), new Point(depth, height / 2), new Point(0, height),
				new Point(width, height), new Point(width - depth, height / 2), new Point(width, 0)));
	}

	/**
	 * A tag that narrows to a string hole at its left end.
	 *
	 * @param shoulder how far the slanting corners reach along both sides, in mm; positive, less than the width and at
	 *                 most half the height
	 * @param hole     diameter of the hole in mm, which lies as far from the left end as the shoulder reaches; positive
	 *                 and small enough to lie within the tag
	 * @throws IllegalArgumentException if a length is out of range
	 */
	public static String tag(double width, double height, double shoulder, double hole) {
		check(width, height);
		if (!(shoulder > 0 && shoulder < width && shoulder <= height / 2)) {
			throw new IllegalArgumentException("a tag of " + width + " × " + height + " with a shoulder of " + shoulder);
		}
		if (!(hole > 0 && hole / 2 < Math.min(shoulder, Math.min(width - shoulder, height / 2)))) {
			throw new IllegalArgumentException("a hole of " + hole + " mm in a shoulder of " + shoulder);
		}
		String outer = closed(List.of(new Point(0, shoulder), new Point(0, height - shoulder),
				new Point(shoulder, height), new Point(width, height), new Point(width, 0), new Point(shoulder, 0)));
		ShapePath path = new ShapePath();
		path.move(shoulder - hole / 2, height / 2);
		path.arcClockwise(hole / 2, shoulder + hole / 2, height / 2);
		path.arcClockwise(hole / 2, shoulder - hole / 2, height / 2);
		return outer + ' ' + path.close();
	}

	private static void check(double width, double height) {
		if (!(width > 0 && height > 0) || !Double.isFinite(width) || !Double.isFinite(height)) {
			throw new IllegalArgumentException("a shape of " + width + " × " + height + " mm");
		}
	}

	private static void checkCorners(int corners) {
		if (corners < FEWEST_CORNERS) {
			throw new IllegalArgumentException("a shape with " + corners + " corners");
		}
	}

	/** @param turn share of a full turn, counter-clockwise to the viewer from the top */
	private static Point onEllipse(double width, double height, double turn, double share) {
		double angle = 2 * Math.PI * turn;
		return new Point(width / 2 - share * Math.sin(angle) * width / 2,
				height / 2 - share * Math.cos(angle) * height / 2);
	}

	private static String closed(List<Point> corners) {
		ShapePath path = new ShapePath();
		path.move(corners.get(0).x(), corners.get(0).y());
		for (Point corner : corners.subList(1, corners.size())) {
			path.line(corner.x(), corner.y());
		}
		return path.close();
	}

	private void move(double x, double y) {
		data.append('M').append(number(x)).append(' ').append(number(y));
	}

	private void line(double x, double y) {
		data.append(" L").append(number(x)).append(' ').append(number(y));
	}

	/** At most half an ellipse, counter-clockwise to the viewer. */
	private void arc(double rx, double ry, double x, double y) {
		arc(rx, ry, 0, x, y);
	}

	private void arcClockwise(double radius, double x, double y) {
		arc(radius, radius, 1, x, y);
	}

	private void arc(double rx, double ry, int sweep, double x, double y) {
		data.append(" A").append(number(rx)).append(' ').append(number(ry)).append(" 0 0 ").append(sweep).append(' ')
				.append(number(x)).append(' ').append(number(y));
	}

	private String close() {
		return data.append(" Z").toString();
	}

	private static String number(double value) {
		BigDecimal rounded = new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return rounded.signum() == 0 ? "0" : rounded.toPlainString();
	}
}
