package org.frisket.ui.bench.internal.looks;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Path;

/** What a look is painted with. Widths and dashes are in pixels of the screen at 100 %, also on paper. */
public interface Ink {

	int OPAQUE = 255;

	/** Fills what the path encloses; a ring within a ring is a hole. */
	void fill(Path path, Color colour);

	/** Paints pixels. */
	void pixels(ShownPixels pixels);

	/**
	 * Draws along the path with round joins.
	 *
	 * @param alpha from 0 to {@link #OPAQUE}
	 * @param dash  lengths of dashes and gaps in turn; none for a solid line
	 */
	void line(Path path, Color colour, double width, int alpha, int... dash);
}
