package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.frisket.ui.ThemeColour;

/**
 * The box that gathers elements, in the theme's accent and never by inverting pixels. One that gathers what it touches
 * is dashed.
 */
public final class MarqueeFigure extends Figure {

	private static final int FILL_ALPHA = 28;
	private static final int OPAQUE = 255;
	private static final int[] DASH = { 6, 4 };

	private boolean touching;

	/** Whether it gathers what it touches, and not only what it encloses. */
	public void setTouching(boolean isTouching) {
		if (touching != isTouching) {
			touching = isTouching;
			repaint();
		}
	}

	public boolean isTouching() {
		return touching;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		Rectangle box = getBounds();
		graphics.setBackgroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setAlpha(touching ? FILL_ALPHA / 2 : FILL_ALPHA);
		graphics.fillRectangle(box);
		graphics.setAlpha(OPAQUE);
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(touching ? 2 : 1);
		if (touching) {
			graphics.setLineDash(DASH);
			graphics.drawRectangle(box.x + 1, box.y + 1, box.width - 2, box.height - 2);
		} else {
			graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
		}
	}
}
