package org.frisket.testkit;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

import javax.imageio.ImageIO;

import org.frisket.model.ImageBytes;

/** Pictures whose contour is known, for they are drawn by Java's own renderer: a disc, which has no corner to hide behind. */
public final class RenderedArt {

	public static final int WIDTH = 400;
	public static final int HEIGHT = 300;
	public static final double CENTRE_X = 200.3;
	public static final double CENTRE_Y = 150.7;
	public static final double RADIUS = 100;

	private static final Color ART = new Color(0x1d, 0x6f, 0x78);

	private RenderedArt() {
	}

	/** A disc on what can be seen through. */
	public static ImageBytes disc() {
		return png(image(null, disc(RADIUS, CENTRE_X)));
	}

	/** Two discs of a third of that, side by side. */
	public static ImageBytes twoDiscs() {
		Path2D both = new Path2D.Double(disc(RADIUS / 3, CENTRE_X - RADIUS));
		both.append(disc(RADIUS / 3, CENTRE_X + RADIUS), false);
		return png(image(null, both));
	}

	/** A disc on a ground in one colour. */
	public static ImageBytes discOn(Color ground) {
		return png(image(ground, disc(RADIUS, CENTRE_X)));
	}

	/** Nothing but ground; null for what can be seen through. */
	public static ImageBytes bare(Color ground) {
		return png(image(ground, null));
	}

	private static Shape disc(double radius, double x) {
		return new Ellipse2D.Double(x - radius, CENTRE_Y - radius, 2 * radius, 2 * radius);
	}

	private static BufferedImage image(Color ground, Shape art) {
		BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
		Graphics2D graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.setTransform(new AffineTransform());
		if (ground != null) {
			graphics.setColor(ground);
			graphics.fillRect(0, 0, WIDTH, HEIGHT);
		}
		if (art != null) {
			graphics.setColor(ART);
			graphics.fill(art);
		}
		graphics.dispose();
		return image;
	}

	private static ImageBytes png(BufferedImage image) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		try {
			ImageIO.write(image, "png", out);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		return ImageBytes.of(out.toByteArray());
	}
}
