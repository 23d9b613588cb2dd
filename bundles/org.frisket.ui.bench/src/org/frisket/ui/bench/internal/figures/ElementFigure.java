package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.frisket.geometry.Point;
import org.frisket.model.OperationKind;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.Units;

/** An element as it lies on the bench: its stock, and the lines of its operations. */
public final class ElementFigure extends CurveFigure {

	/** How near the pointer must come to a line, in pixels. */
	private static final int REACH_PX = 3;

	private Color stock;
	private boolean reachable = true;

	public ElementFigure(CanvasZoom zoom) {
		super(zoom);
	}

	/** The colour of the stock; null for a stock without one. */
	public void setStock(Color colour) {
		stock = colour;
		repaint();
	}

	/** Whether the pointer finds the element, which it does not on a locked layer. */
	public void setReachable(boolean reachable) {
		this.reachable = reachable;
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return reachable && touches(new Point(Units.mm(x), Units.mm(y)), REACH_PX / zoom.pixelsPerMm());
	}

	@Override
	protected void paintCurves(Graphics graphics) {
		if (picture().isPiece()) {
			graphics.setBackgroundColor(stock != null ? stock : ThemeColour.BENCH_STOCK.colour());
			graphics.setFillRule(SWT.FILL_EVEN_ODD);
			graphics.fillPath(curves());
		}
		if (picture().operations().contains(OperationKind.PRINT)) {
			OperationStroke.PRINT.paint(graphics, hatching());
		}
		for (OperationKind kind : picture().strokes()) {
			OperationStroke.of(kind).paint(graphics, curves());
		}
	}
}
