package org.frisket.ui.print.internal.marks;

import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;

/**
 * Where a sheet is seen, in whole sight.
 *
 * @param scale pixels in a millimetre
 * @param left  pixel of its left edge
 * @param top   pixel of its upper edge
 */
record Frame(double scale, double left, double top) {

	private static final int BORDER_PX = 16;
	private static final double LEAST_SCALE = 0.05;

	/** @param below pixels that are left free below it */
	static Frame of(double width, double height, Rectangle area, int below) {
		double roomX = area.width - 2.0 * BORDER_PX;
		double roomY = area.height - 2.0 * BORDER_PX - below;
		double scale = Math.max(LEAST_SCALE, Math.min(roomX / Math.max(1, width), roomY / Math.max(1, height)));
		return new Frame(scale, (area.width - width * scale) / 2,
				Math.max(BORDER_PX, (area.height - below - height * scale) / 2));
	}

	int x(double mm) {
		return (int) Math.round(left + mm * scale);
	}

	int y(double mm) {
		return (int) Math.round(top + mm * scale);
	}

	Point mm(int x, int y) {
		return new Point((x - left) / scale, (y - top) / scale);
	}

	Rectangle box(Bounds box) {
		int x = x(box.minX());
		int y = y(box.minY());
		return new Rectangle(x, y, x(box.maxX()) - x, y(box.maxY()) - y);
	}

	/** To be disposed of by whoever asks. */
	Path path(Device device, Region region) {
		Path path = new Path(device);
		for (Contour contour : region.contours()) {
			Point start = contour.start();
			path.moveTo(px(start), py(start));
			for (Segment segment : contour.segments()) {
				if (segment instanceof Cubic c) {
					path.cubicTo(px(c.control1()), py(c.control1()), px(c.control2()), py(c.control2()), px(c.end()),
							py(c.end()));
				} else {
					path.lineTo(px(segment.end()), py(segment.end()));
				}
			}
			path.close();
		}
		return path;
	}

	private float px(Point point) {
		return (float) (left + point.x() * scale);
	}

	private float py(Point point) {
		return (float) (top + point.y() * scale);
	}
}
