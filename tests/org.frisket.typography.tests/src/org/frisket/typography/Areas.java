package org.frisket.typography;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Segment;

/** Outlines seen through {@code java.awt.geom}, which shares no code with what is tested. */
final class Areas {

	private Areas() {
	}

	static Path2D path(Outline outline) {
		Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
		for (Contour contour : outline.contours()) {
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

	static Area area(Outline outline) {
		return new Area(path(outline));
	}

	static boolean meet(Area a, Area b) {
		Area both = new Area(a);
		both.intersect(b);
		return size(both) > 1e-9;
	}

	/** By the shoelace formula on a flattened path whose contours do not overlap. */
	static double size(Shape shape) {
		double sum = 0;
		double[] c = new double[6];
		double startX = 0;
		double startY = 0;
		double x = 0;
		double y = 0;
		for (PathIterator path = shape.getPathIterator(null, 1e-4); !path.isDone(); path.next()) {
			int kind = path.currentSegment(c);
			double toX = kind == PathIterator.SEG_CLOSE ? startX : c[0];
			double toY = kind == PathIterator.SEG_CLOSE ? startY : c[1];
			if (kind == PathIterator.SEG_MOVETO) {
				startX = toX;
				startY = toY;
			} else {
				sum += (x * toY - toX * y) / 2;
			}
			x = toX;
			y = toY;
		}
		return Math.abs(sum);
	}
}
