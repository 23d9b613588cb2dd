package org.frisket.ui.sheets.internal.sheets.surface;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.CurvePath;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.figures.ZoomedFigure;
import org.frisket.ui.bench.internal.looks.GraphicsInk;
import org.frisket.ui.bench.internal.looks.Ink;
import org.frisket.ui.bench.internal.picture.FlatCurves;
import org.frisket.ui.bench.internal.picture.Hatching;

/** What lies in each other, hatched; or the line between what is too near, with both its ends. */
final class ObstacleFigure extends ZoomedFigure {

	private static final int EDGE_PX = 5;
	private static final double HATCH_PX = 6;
	private static final double FLATNESS = 0.05;

	private final Outline overlaps;
	private final Point from;
	private final Point to;
	private Path edge;
	private Path hatching;

	/** @param place from the frame of the obstacle to the surface */
	ObstacleFigure(CanvasZoom zoom, Board.Obstacle obstacle, Transform place) {
		super(zoom);
		overlaps = obstacle.overlaps().transformed(place);
		from = obstacle.from() == null ? null : place.apply(obstacle.from());
		to = obstacle.to() == null ? null : place.apply(obstacle.to());
	}

	@Override
	protected void zoomed() {
		forget();
		Bounds box = overlaps.bounds();
		if (from != null && to != null) {
			box = box.with(from).with(to);
		}
		setBounds(Units.figure(box.grown(EDGE_PX / zoom.pixelsPerMm())));
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		PixelSpace.paint(graphics, zoom.zoom(), () -> paintPixels(graphics));
	}

	private void paintPixels(Graphics graphics) {
		Ink ink = new GraphicsInk(graphics);
		if (!overlaps.isEmpty()) {
			if (edge == null) {
				edge = path(overlaps);
				hatching = path(Hatching.of(new FlatCurves(overlaps, FLATNESS), HATCH_PX / zoom.pixelsPerMm()));
			}
			ink.line(hatching, ThemeColour.FINDING_BLOCKING.colour(), 1, Ink.OPAQUE);
			ink.line(edge, ThemeColour.BENCH_SHEET.colour(), 4, 160);
			ink.line(edge, ThemeColour.FINDING_BLOCKING.colour(), 2, Ink.OPAQUE);
		} else if (from != null && to != null) {
			graphics.setForegroundColor(ThemeColour.FINDING_CAUTION.colour());
			graphics.setBackgroundColor(ThemeColour.FINDING_CAUTION.colour());
			graphics.setLineWidth(2);
			double scale = zoom.pixelsPerMm();
			int x1 = (int) Math.round(from.x() * scale);
			int y1 = (int) Math.round(from.y() * scale);
			int x2 = (int) Math.round(to.x() * scale);
			int y2 = (int) Math.round(to.y() * scale);
			graphics.drawLine(x1, y1, x2, y2);
			graphics.fillOval(x1 - 2, y1 - 2, 5, 5);
			graphics.fillOval(x2 - 2, y2 - 2, 5, 5);
		}
	}

	private Path path(Outline outline) {
		double scale = zoom.pixelsPerMm();
		return CurvePath.of(Display.getCurrent(), outline, Transform.scaling(scale, scale));
	}

	private void forget() {
		if (edge != null) {
			edge.dispose();
			hatching.dispose();
			edge = null;
			hatching = null;
		}
	}

	@Override
	public void addNotify() {
		super.addNotify();
		zoomed();
	}

	@Override
	public void removeNotify() {
		forget();
		super.removeNotify();
	}
}
