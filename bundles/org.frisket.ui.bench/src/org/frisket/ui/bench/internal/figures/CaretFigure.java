package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Graphics;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;

/** The caret in a wording that is typed: a line in the accent that stands still and is as wide at every zoom. */
public final class CaretFigure extends ZoomedFigure {

	private static final int WIDTH_PX = 2;
	private static final int EDGE_PX = 3;

	private Point foot = Point.ORIGIN;
	private Point head = Point.ORIGIN;

	public CaretFigure(CanvasZoom zoom) {
		super(zoom);
	}

	/** Stands between two places in mm. */
	public void stand(Point newFoot, Point newHead) {
		if (foot.equals(newFoot) && head.equals(newHead)) {
			return;
		}
		foot = newFoot;
		head = newHead;
		zoomed();
		repaint();
	}

	public Point foot() {
		return foot;
	}

	public Point head() {
		return head;
	}

	@Override
	protected void zoomed() {
		setBounds(Units.figure(Bounds.of(foot).with(head).grown(EDGE_PX / zoom.pixelsPerMm())));
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		PixelSpace.paint(graphics, zoom.zoom(), () -> {
			double scale = zoom.pixelsPerMm();
			graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
			graphics.setLineWidth(WIDTH_PX);
			graphics.drawLine((int) Math.round(foot.x() * scale), (int) Math.round(foot.y() * scale),
					(int) Math.round(head.x() * scale), (int) Math.round(head.y() * scale));
		});
	}
}
