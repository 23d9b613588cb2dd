package org.frisket.ui.bench.internal.figures;

import java.util.function.Supplier;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.Handle;
import org.eclipse.swt.SWT;
import org.frisket.ui.ThemeColour;

/** A place by which the selection is taken hold of: a small square, or a round one where it turns. */
public final class GripFigure extends Figure implements Handle {

	/** Wide enough to be met; the mark in it is smaller. */
	private static final int SIZE_PX = 13;
	private static final int INSET_PX = 3;

	private final boolean round;
	private final Supplier<DragTracker> tracker;

	public GripFigure(boolean round, Supplier<DragTracker> tracker) {
		this.round = round;
		this.tracker = tracker;
	}

	/** Puts its middle at a place in pixels of its layer. */
	public void put(int x, int y) {
		setBounds(new Rectangle(x - SIZE_PX / 2, y - SIZE_PX / 2, SIZE_PX, SIZE_PX));
	}

	@Override
	public DragTracker getDragTracker() {
		return tracker.get();
	}

	@Override
	public Point getAccessibleLocation() {
		Point middle = getBounds().getCenter();
		translateToAbsolute(middle);
		return middle;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		Rectangle mark = getBounds().getCopy().shrink(INSET_PX, INSET_PX);
		graphics.setAntialias(round ? SWT.ON : SWT.OFF);
		graphics.setBackgroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(1);
		Rectangle line = mark.getCopy().resize(-1, -1);
		if (round) {
			graphics.fillOval(mark);
			graphics.drawOval(line);
		} else {
			graphics.fillRectangle(mark);
			graphics.drawRectangle(line);
		}
	}
}
