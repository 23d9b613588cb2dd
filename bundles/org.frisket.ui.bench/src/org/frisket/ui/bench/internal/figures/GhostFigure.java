package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.SWT;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/** Where a dragged element would come to lie: its own shape, seen through. */
public final class GhostFigure extends CurveFigure {

	private static final int FILL_ALPHA = 70;
	private static final int OPAQUE = 255;

	public GhostFigure(CanvasZoom zoom) {
		super(zoom);
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintCurves(Graphics graphics) {
		graphics.setAlpha(FILL_ALPHA);
		graphics.setBackgroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setFillRule(SWT.FILL_EVEN_ODD);
		graphics.fillPath(curves());
		graphics.setAlpha(OPAQUE);
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(1);
		graphics.drawPath(curves());
	}
}
