package org.frisket.export.pdf;

import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ColorModel;
import java.awt.image.Raster;

/**
 * A paint as it is in a piece of the page for which it was made: masks know the pixels of the page, not those of the piece.
 *
 * @param left of the piece, in pixels of the page @param top the same
 */
record PaintOfPiece(Paint paint, int left, int top) implements Paint {

	@Override
	public PaintContext createContext(ColorModel model, Rectangle device, Rectangle2D user, AffineTransform transform,
			RenderingHints hints) {
		Rectangle whole = new Rectangle(device);
		whole.translate(left, top);
		AffineTransform onPage = AffineTransform.getTranslateInstance(left, top);
		onPage.concatenate(transform);
		PaintContext context = paint.createContext(model, whole, user, onPage, hints);
		return new PaintContext() {

			@Override
			public Raster getRaster(int x, int y, int width, int height) {
				return context.getRaster(x + left, y + top, width, height);
			}

			@Override
			public ColorModel getColorModel() {
				return context.getColorModel();
			}

			@Override
			public void dispose() {
				context.dispose();
			}
		};
	}

	@Override
	public int getTransparency() {
		return paint.getTransparency();
	}
}
