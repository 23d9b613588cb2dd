package org.frisket.testkit;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Segment;

/** Areas computed by the JDK's own geometry, as a second opinion. */
public final class IndependentArea {

	private IndependentArea() {
	}

	/** Contours as a path of {@code java.awt}, filled by the non-zero rule. */
	public static Path2D path(List<Contour> contours) {
		Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
		for (Contour contour : contours) {
			if (contour.isEmpty()) {
				continue;
			}
			path.moveTo(contour.start().x(), contour.start().y());
			for (Segment segment : contour.segments()) {
				if (segment instanceof Cubic c) {
					path.curveTo(c.control1().x(), c.control1().y(), c.control2().x(), c.control2().y(), c.end().x(),
							c.end().y());
				} else {
					path.lineTo(segment.end().x(), segment.end().y());
				}
			}
			path.closePath();
		}
		return path;
	}

	/** Area in mm² of what the non-zero rule fills, overlaps counted once; chords within 0.0005 mm of the curves. */
	public static double nonZero(List<Contour> contours) {
		return signed(new Area(path(contours)));
	}

	private static double signed(Area area) {
		// Area's contours do not overlap, and its holes run against what they are holes of
		PathIterator iterator = area.getPathIterator(new AffineTransform(), 0.0005);
		double[] c = new double[6];
		double sum = 0;
		double startX = 0;
		double startY = 0;
		double x = 0;
		double y = 0;
		for (; !iterator.isDone(); iterator.next()) {
			switch (iterator.currentSegment(c)) {
			case PathIterator.SEG_MOVETO -> {
				startX = c[0];
				startY = c[1];
				x = startX;
				y = startY;
			}
			case PathIterator.SEG_LINETO -> {
				sum += x * c[1] - c[0] * y;
				x = c[0];
				y = c[1];
			}
			case PathIterator.SEG_CLOSE -> {
				sum += x * startY - startX * y;
				x = startX;
				y = startY;
			}
			default -> throw new IllegalStateException();
			}
		}
		return Math.abs(sum) / 2;
	}
}
