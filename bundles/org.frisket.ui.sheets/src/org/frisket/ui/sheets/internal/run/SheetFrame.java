package org.frisket.ui.sheets.internal.run;

import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.run.play.StrokeWay;

/**
 * Where a sheet is seen: as large as it has room, a caption below it.
 *
 * @param scale pixels in a millimetre
 * @param left  pixel of x = 0
 * @param top   pixel of y = 0
 */
record SheetFrame(double scale, double left, double top) {

	private static final int MARGIN_PX = 12;
	/** An enlarged sheet would say no more. */
	private static final double MOST_SCALE = 8;
	private static final double LEAST_SCALE = 0.05;

	static SheetFrame of(Bounds page, Rectangle area, int captionPx) {
		double width = Math.max(1, page.width());
		double height = Math.max(1, page.height());
		double scale = Math.max(LEAST_SCALE, Math.min(MOST_SCALE, Math.min((area.width - 2 * MARGIN_PX) / width,
				(area.height - 2 * MARGIN_PX - captionPx) / height)));
		double left = Math.max(MARGIN_PX, (area.width - width * scale) / 2) - page.minX() * scale;
		double top = Math.max(MARGIN_PX, (area.height - captionPx - height * scale) / 2) - page.minY() * scale;
		return new SheetFrame(scale, left, top);
	}

	double x(double mm) {
		return left + mm * scale;
	}

	double y(double mm) {
		return top + mm * scale;
	}

	Point mm(int x, int y) {
		return new Point((x - left) / scale, (y - top) / scale);
	}

	/** @param grown by so many pixels on each side */
	Rectangle pixels(Bounds bounds, int grown) {
		int x = (int) Math.floor(x(bounds.minX())) - grown;
		int y = (int) Math.floor(y(bounds.minY())) - grown;
		return new Rectangle(x, y, (int) Math.ceil(x(bounds.maxX())) + grown - x,
				(int) Math.ceil(y(bounds.maxY())) + grown - y);
	}

	void add(Path path, StrokeWay way) {
		path.moveTo((float) x(way.x(0)), (float) y(way.y(0)));
		for (int i = 1; i < way.size(); i++) {
			path.lineTo((float) x(way.x(i)), (float) y(way.y(i)));
		}
	}

	/** No more of a way than is done of it. @param share from 0 to 1 */
	void add(Path path, StrokeWay way, double share) {
		path.moveTo((float) x(way.x(0)), (float) y(way.y(0)));
		int corners = way.cornersUpTo(share);
		for (int i = 1; i < corners; i++) {
			path.lineTo((float) x(way.x(i)), (float) y(way.y(i)));
		}
		Point end = way.at(share);
		path.lineTo((float) x(end.x()), (float) y(end.y()));
	}
}
