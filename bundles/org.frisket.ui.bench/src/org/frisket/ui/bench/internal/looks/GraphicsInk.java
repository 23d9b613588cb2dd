package org.frisket.ui.bench.internal.looks;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;

/** Ink for the bench. */
public record GraphicsInk(Graphics graphics) implements Ink {

	@Override
	public void fill(Path path, Color colour) {
		graphics.setBackgroundColor(colour);
		graphics.setFillRule(SWT.FILL_EVEN_ODD);
		graphics.fillPath(path);
	}

	@Override
	public void pixels(ShownPixels pixels) {
		Rectangle size = pixels.image().getBounds();
		Rectangle where = pixels.where();
		graphics.drawImage(pixels.image(), 0, 0, size.width, size.height, where.x, where.y, where.width, where.height);
	}

	@Override
	public void line(Path path, Color colour, double width, int alpha, int... dash) {
		graphics.setAlpha(alpha);
		graphics.setForegroundColor(colour);
		graphics.setLineWidth((int) Math.round(width));
		graphics.setLineJoin(SWT.JOIN_ROUND);
		if (dash.length > 0) {
			graphics.setLineDash(dash);
		}
		graphics.drawPath(path);
		graphics.setLineStyle(SWT.LINE_SOLID);
		graphics.setAlpha(OPAQUE);
	}
}
