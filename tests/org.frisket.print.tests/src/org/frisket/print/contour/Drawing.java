package org.frisket.print.contour;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.print.picture.Pixels;

/** A shape in mm, drawn by Java's own renderer: the known outline that a traced contour is measured against. */
final class Drawing {

	static final double MM_PER_INCH = 25.4;

	private Drawing() {
	}

	/** The shape's segments as Java gives them. */
	static List<Contour> contours(Shape shape) {
		OutlineBuilder builder = new OutlineBuilder();
		double[] c = new double[6];
		for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
			switch (i.currentSegment(c)) {
			case PathIterator.SEG_MOVETO -> builder.moveTo(new Point(c[0], c[1]));
			case PathIterator.SEG_LINETO -> builder.lineTo(new Point(c[0], c[1]));
			case PathIterator.SEG_QUADTO -> builder.quadraticTo(new Point(c[0], c[1]), new Point(c[2], c[3]));
			case PathIterator.SEG_CUBICTO -> builder.cubicTo(new Point(c[0], c[1]), new Point(c[2], c[3]),
					new Point(c[4], c[5]));
			default -> builder.close();
			}
		}
		Outline outline = builder.build();
		return outline.contours();
	}

	/** Antialiased, on a sheet of so many mm. @param background null for a transparent one */
	static Pixels draw(Shape shape, double width, double height, double dpi, Color art, Color background) {
		BufferedImage image = new BufferedImage((int) Math.ceil(width / MM_PER_INCH * dpi),
				(int) Math.ceil(height / MM_PER_INCH * dpi), BufferedImage.TYPE_INT_ARGB);
		Graphics2D graphics = image.createGraphics();
		if (background != null) {
			graphics.setColor(background);
			graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
		}
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.setColor(art);
		graphics.fill(AffineTransform.getScaleInstance(dpi / MM_PER_INCH, dpi / MM_PER_INCH).createTransformedShape(shape));
		graphics.dispose();
		return pixels(image);
	}

	static Pixels pixels(BufferedImage image) {
		return new Pixels(image.getWidth(), image.getHeight(),
				image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()));
	}
}
