package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.PointList;
import org.frisket.ui.ThemeColour;

/** The box that a wording is fitted into, as a broken line that the pointer passes through. */
public final class BoxFigure extends Figure {

	private PointList corners = new PointList();

	/** @param pixels of its layer, x and y of each corner */
	public void show(int[] pixels) {
		corners = new PointList(pixels);
		setBounds(corners.getBounds().getCopy().expand(1, 1));
		repaint();
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(1);
		graphics.setLineStyle(Graphics.LINE_DASH);
		graphics.drawPolygon(corners);
	}
}
