package org.frisket.ui.bench.internal.looks;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;

/**
 * Ink for paper and for pictures of it.
 *
 * @param pixel how many units of the ground a pixel of the screen is
 */
public record GcInk(GC gc, double pixel) implements Ink {

	private static final float MITRE_LIMIT = 10;

	@Override
	public void fill(Path path, Color colour) {
		gc.setBackground(colour);
		gc.setFillRule(SWT.FILL_EVEN_ODD);
		gc.fillPath(path);
	}

	@Override
	public void pixels(ShownPixels pixels) {
		Rectangle size = pixels.image().getBounds();
		Rectangle where = pixels.where();
		gc.drawImage(pixels.image(), 0, 0, size.width, size.height, where.x, where.y, where.width, where.height);
	}

	@Override
	public void line(Path path, Color colour, double width, int alpha, int... dash) {
		gc.setAlpha(alpha);
		gc.setForeground(colour);
		float[] dashes = new float[dash.length];
		for (int i = 0; i < dash.length; i++) {
			dashes[i] = (float) (dash[i] * pixel);
		}
		gc.setLineAttributes(new LineAttributes((float) (width * pixel), SWT.CAP_FLAT, SWT.JOIN_ROUND,
				dash.length == 0 ? SWT.LINE_SOLID : SWT.LINE_CUSTOM, dash.length == 0 ? null : dashes, 0, MITRE_LIMIT));
		gc.drawPath(path);
		gc.setAlpha(OPAQUE);
	}
}
