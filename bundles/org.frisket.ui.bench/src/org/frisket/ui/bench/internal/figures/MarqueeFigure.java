package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.frisket.ui.ThemeColour;

/** The box that gathers elements, in the theme's accent and never by inverting pixels. */
public final class MarqueeFigure extends Figure {

	private static final int FILL_ALPHA = 28;
	private static final int OPAQUE = 255;

	@Override
	protected void paintFigure(Graphics graphics) {
		Rectangle box = getBounds();
		graphics.setAlpha(FILL_ALPHA);
		graphics.setBackgroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.fillRectangle(box);
		graphics.setAlpha(OPAQUE);
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(1);
		graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
	}
}
