package org.frisket.orders.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/**
 * Outlines in the operators of PDF paths (ISO 32000-1, table 59): in points of 1/72 in, y up, from the lower left corner of
 * what the job takes up.
 *
 * @param frame what the job takes up, in mm, y down
 */
record CutPath(Bounds frame) {

	private static final double POINTS_PER_MM = 72 / 25.4;
	/** 0.0001 points are less than 0.1 µm. */
	private static final int DECIMALS = 4;

	String of(Outline outline) {
		StringBuilder path = new StringBuilder();
		for (Contour contour : outline.contours()) {
			if (!contour.isEmpty()) {
				add(contour, path);
			}
		}
		return path.toString();
	}

	private void add(Contour contour, StringBuilder path) {
		operator(path, "m", contour.start());
		int last = contour.segments().size() - 1;
		for (int i = 0; i <= last; i++) {
			Segment segment = contour.segments().get(i);
			if (segment instanceof Cubic cubic) {
				operator(path, "c", cubic.control1(), cubic.control2(), cubic.end());
			} else if (i < last || !contour.isClosed()) {
				operator(path, "l", segment.end());
			}
		}
		if (contour.isClosed()) {
			operator(path, "h");
		}
	}

	private void operator(StringBuilder path, String operator, Point... points) {
		for (Point point : points) {
			path.append(path.length() == 0 ? "" : " ").append(points(point.x() - frame.minX())).append(' ')
					.append(points(frame.maxY() - point.y()));
		}
		path.append(' ').append(operator);
	}

	/** Left, bottom, right and top of a part. */
	String box(Bounds bounds) {
		return points(bounds.minX() - frame.minX()) + ' ' + points(frame.maxY() - bounds.maxY()) + ' '
				+ points(bounds.maxX() - frame.minX()) + ' ' + points(frame.maxY() - bounds.minY());
	}

	/** A length of mm in points. */
	static String points(double mm) {
		return number(mm * POINTS_PER_MM);
	}

	static String number(double value) {
		BigDecimal number = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
		return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
	}
}
