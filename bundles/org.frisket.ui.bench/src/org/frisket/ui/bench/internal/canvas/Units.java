package org.frisket.ui.bench.internal.canvas;

import org.eclipse.draw2d.geometry.Rectangle;
import org.frisket.geometry.Bounds;

/** The border between millimetres, which are doubles, and figure units, which are integers. */
public final class Units {

	/** Figure units in a millimetre. */
	public static final double PER_MM = 100;

	private Units() {
	}

	/** The smallest figure rectangle around a box in mm; an empty one at the origin for an empty box. */
	public static Rectangle figure(Bounds mm) {
		if (mm.isEmpty()) {
			return new Rectangle();
		}
		int x = (int) Math.floor(mm.minX() * PER_MM);
		int y = (int) Math.floor(mm.minY() * PER_MM);
		return new Rectangle(x, y, (int) Math.ceil(mm.maxX() * PER_MM) - x, (int) Math.ceil(mm.maxY() * PER_MM) - y);
	}

	public static double mm(int figureUnits) {
		return figureUnits / PER_MM;
	}
}
