package org.frisket.ui.bench.internal.print;

import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * Where paper lies on what is painted on. The window system's own transforms are of no use for it: on printers it
 * applies its scale twice with them.
 *
 * @param scale units in a millimetre
 * @param x     where the left edge of the paper lies, in units
 * @param y     where its top edge lies, in units
 */
public record Ground(double scale, double x, double y) {

	/** From mm of paper to units. */
	Transform fromPaper() {
		return Transform.scaling(scale, scale).then(Transform.translation(x, y));
	}

	/** The smallest box of whole units around one in mm of paper. */
	Rectangle around(Bounds mm) {
		int left = (int) Math.floor(x + mm.minX() * scale);
		int top = (int) Math.floor(y + mm.minY() * scale);
		return new Rectangle(left, top, (int) Math.ceil(x + mm.maxX() * scale) - left,
				(int) Math.ceil(y + mm.maxY() * scale) - top);
	}

	/** Adds a line in mm of paper to a path in units. */
	void add(Line mm, Path path) {
		Point start = fromPaper().apply(mm.start());
		Point end = fromPaper().apply(mm.end());
		path.moveTo((float) start.x(), (float) start.y());
		path.lineTo((float) end.x(), (float) end.y());
	}
}
