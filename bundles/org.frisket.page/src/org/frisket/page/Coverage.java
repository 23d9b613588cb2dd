package org.frisket.page;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

import org.frisket.geometry.Outline;

/**
 * How much of each pixel an outline covers; the colour is left to whoever shows it.
 *
 * @param values 0 to 255 as bytes, row by row from the top
 */
public record Coverage(int width, int height, byte[] values) {

	/**
	 * @param scale pixels to a unit of the outline
	 * @param x     where its origin comes to lie, in pixels
	 */
	public static Coverage of(Outline outline, double scale, double x, double y, int width, int height) {
		BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
		byte[] values = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
		if (!outline.isEmpty()) {
			Graphics2D graphics = image.createGraphics();
			graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
			graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
			graphics.setColor(Color.WHITE);
			graphics.fill(new AffineTransform(scale, 0, 0, scale, x, y)
					.createTransformedShape(AwtPath.of(outline.contours())));
			graphics.dispose();
		}
		return new Coverage(width, height, values);
	}

	public int at(int x, int y) {
		return values[y * width + x] & 0xff;
	}
}
