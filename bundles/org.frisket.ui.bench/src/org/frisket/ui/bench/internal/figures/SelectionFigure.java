package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.SWT;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/** The accent along the shape of a selected element. */
public final class SelectionFigure extends CurveFigure {

	public SelectionFigure(CanvasZoom zoom) {
		super(zoom);
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintCurves(Graphics graphics) {
		graphics.setLineJoin(SWT.JOIN_ROUND);
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.setLineWidth(5);
		graphics.drawPath(curves());
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(3);
		graphics.drawPath(curves());
	}
}
