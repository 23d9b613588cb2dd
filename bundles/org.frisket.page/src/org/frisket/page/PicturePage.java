package org.frisket.page;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.prepare.layout.Paper;
import org.frisket.typography.FontFace;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;

/** A page as a picture, with its resolution, so that it prints at its size. */
public final class PicturePage implements PagePainter, AutoCloseable {

	private static final float LINE_WIDTH = 0.1f;

	private final int dpi;
	private final BufferedImage image;
	private final Graphics2D graphics;
	private final FontFace face;

	/** In greys, as a printer takes it. */
	public PicturePage(Paper paper, int dpi) throws IOException {
		this(paper.width(), paper.height(), dpi, BufferedImage.TYPE_BYTE_GRAY);
	}

	/** In colours, as a screen shows it. @param width of the page @param height of it, in mm */
	public PicturePage(double width, double height, int dpi) throws IOException {
		this(width, height, dpi, BufferedImage.TYPE_INT_RGB);
	}

	private PicturePage(double width, double height, int dpi, int type) throws IOException {
		this.dpi = dpi;
		face = Labels.face();
		double scale = dpi / 25.4;
		image = new BufferedImage((int) Math.ceil(width * scale), (int) Math.ceil(height * scale), type);
		graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.setColor(Color.WHITE);
		graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
		graphics.scale(scale, scale);
		graphics.setStroke(new BasicStroke(LINE_WIDTH));
	}

	@Override
	public void fill(Outline outline, double grey) {
		graphics.setColor(colour(grey));
		graphics.fill(AwtPath.of(outline.contours()));
	}

	@Override
	public void fill(Outline outline, String colour) {
		float[] rgb = Ink.rgb(colour);
		graphics.setColor(new Color(rgb[0], rgb[1], rgb[2]));
		graphics.fill(AwtPath.of(outline.contours()));
	}

	@Override
	public void picture(BufferedImage pixels, Transform place) {
		AffineTransform to = new AffineTransform(place.a(), place.b(), place.c(), place.d(), place.e(), place.f());
		to.scale(1.0 / pixels.getWidth(), 1.0 / pixels.getHeight());
		graphics.drawImage(pixels, to, null);
	}

	@Override
	public void stroke(Outline outline, Ink ink) {
		float[] rgb = ink.rgb();
		graphics.setColor(new Color(rgb[0], rgb[1], rgb[2]));
		Stroke usual = graphics.getStroke();
		graphics.setStroke(new BasicStroke((float) ink.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10,
				ink.pattern().isEmpty() ? null : ink.dashes(), 0));
		graphics.draw(AwtPath.of(outline.contours()));
		graphics.setStroke(usual);
	}

	@Override
	public void frame(Bounds box, double grey) {
		graphics.setColor(colour(grey));
		graphics.draw(new Rectangle2D.Double(box.minX(), box.minY(), box.width(), box.height()));
	}

	@Override
	public void words(String text, double x, double baseline, double capHeight, double room, double grey) {
		SetText set = TextSetter.set(Labels.writable(text, face), face, Setting.ofCapHeight(capHeight), Monitor.NONE);
		Outline outline = set.outline();
		if (!outline.isEmpty()) {
			double narrower = Math.min(1, room / outline.bounds().maxX());
			graphics.setColor(colour(grey));
			graphics.fill(new AffineTransform(narrower, 0, 0, 1, x, baseline)
					.createTransformedShape(AwtPath.of(outline.contours())));
		}
	}

	/** As the value of a pixel, and not of its light, as a printer takes it. */
	private static Color colour(double grey) {
		float value = (float) grey;
		return new Color(value, value, value);
	}

	/** What was painted up to now. */
	public BufferedImage image() {
		return image;
	}

	/** As PNG. */
	public void write(OutputStream out) throws IOException {
		Png.write(image, dpi, out);
	}

	@Override
	public void close() {
		graphics.dispose();
	}
}
