package org.frisket.ui.bench.internal.rulers;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.surface.GridStep;
import org.frisket.ui.bench.internal.surface.SurfaceOption;

/** The grid on the sheet: fine lines while there is room for them, and a stronger one every few. */
public final class SheetGrid {

	private static final double LEAST_PX = 8;
	private static final int MINOR_ALPHA = 60;
	private static final int MAJOR_ALPHA = 130;
	private static final int OPAQUE = 255;

	private SheetGrid() {
	}

	/**
	 * Paints it if it is shown, as far as the sheet goes and is seen.
	 *
	 * @param paper the sheet in pixels, with the job's origin at zero
	 */
	public static void paint(Graphics graphics, Rectangle paper, double pixelsPerMm) {
		if (!SurfaceOption.GRID.isOn()) {
			return;
		}
		Rectangle seen = graphics.getClip(new Rectangle()).intersect(paper);
		GridStep step = GridStep.shown();
		double minor = step.millimetres() * pixelsPerMm;
		int every = step.majorEvery();
		while (minor < LEAST_PX) {
			minor *= every;
		}
		graphics.setForegroundColor(ThemeColour.BENCH_GRID.colour());
		graphics.setLineWidth(1);
		for (long i = (long) Math.ceil(seen.x / minor); i * minor < seen.right(); i++) {
			int x = (int) Math.round(i * minor);
			graphics.setAlpha(i % every == 0 ? MAJOR_ALPHA : MINOR_ALPHA);
			graphics.drawLine(x, seen.y, x, seen.bottom() - 1);
		}
		for (long i = (long) Math.ceil(seen.y / minor); i * minor < seen.bottom(); i++) {
			int y = (int) Math.round(i * minor);
			graphics.setAlpha(i % every == 0 ? MAJOR_ALPHA : MINOR_ALPHA);
			graphics.drawLine(seen.x, y, seen.right() - 1, y);
		}
		graphics.setAlpha(OPAQUE);
	}
}
