package org.frisket.ui.views.internal.fonts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.ui.bench.internal.canvas.CurvePath;

/** Paints a sample into a box. */
final class SamplePainter {

	private static final double CAPITALS = 0.45;
	private static final double BASELINE = 0.7;

	private SamplePainter() {
	}

	/** In the foreground colour; what is too wide is cut off, so that all fonts are seen at one size. */
	static void paint(GC gc, Outline sample, Rectangle box) {
		paint(gc, sample, box, CAPITALS * box.height);
	}

	/** Smaller than usual if that brings all of it into the box. */
	static void paintWhole(GC gc, Outline sample, Rectangle box) {
		double width = sample.bounds().width();
		paint(gc, sample, box, width > 0 ? Math.min(CAPITALS * box.height, box.width / width) : 0);
	}

	private static void paint(GC gc, Outline sample, Rectangle box, double capitals) {
		Bounds bounds = sample.bounds();
		if (bounds.isEmpty() || box.width <= 0 || !(bounds.height() > 0)) {
			return;
		}
		double scale = Math.min(capitals, box.height / bounds.height());
		double baseline = box.y + BASELINE * box.height;
		// what hangs or towers further than usual is moved into the box
		baseline -= Math.max(0, baseline + bounds.maxY() * scale - (box.y + box.height));
		baseline += Math.max(0, box.y - (baseline + bounds.minY() * scale));
		Path path = CurvePath.of(gc.getDevice(), sample,
				new Transform(scale, 0, 0, scale, box.x - bounds.minX() * scale, baseline));
		Rectangle clipping = gc.getClipping();
		gc.setClipping(box.intersection(clipping));
		gc.setAntialias(SWT.ON);
		gc.setFillRule(SWT.FILL_WINDING);
		gc.setBackground(gc.getForeground());
		gc.fillPath(path);
		gc.setClipping(clipping);
		path.dispose();
	}
}
