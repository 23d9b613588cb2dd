package org.frisket.export.pdf;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.MultipleGradientPaint;
import java.awt.Paint;
import java.awt.RadialGradientPaint;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Optional;

import de.rototor.pdfbox.graphics2d.IPdfBoxGraphics2DDrawControl;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;

/**
 * Has each shape drawn in a way that PDF knows. Gradients that begin anew are gone on with as far as the shape reaches; a
 * shape whose colours PDF has no word for, such as a pattern, what a mask leaves or a circle of colours that is drawn out
 * to an ellipse, becomes a picture of itself.
 */
final class ShapesForPdf implements IPdfBoxGraphics2DDrawControl {

	/** Of a length; finer than it is seen. */
	private static final double SAME = 1e-3;
	/** Of a radius. Java draws a focus that is further out there; PDF draws a cone then. */
	private static final double WITHIN = 0.99;

	private final Rectangle page;
	private int pixels;

	/** @param width of the page, in pixels of such pictures */
	ShapesForPdf(int width, int height) {
		page = new Rectangle(width, height);
	}

	/** How many shapes became pictures. */
	int pixels() {
		return pixels;
	}

	@Override
	public Shape transformShapeBeforeFill(Shape shape, IDrawControlEnv env) {
		Paint paint = env.getPaint();
		if (isKnown(paint, env.getGraphics())) {
			return shape;
		}
		PdfBoxGraphics2D graphics = env.getGraphics();
		Optional<Paint> unrolled = paint instanceof MultipleGradientPaint gradient && isPlain(gradient) && !ends(gradient)
				? UnrolledGradient.of(gradient, shape.getBounds2D()) : Optional.empty();
		if (unrolled.isPresent()) {
			graphics.setPaint(unrolled.get());
			graphics.fill(shape);
			graphics.setPaint(paint);
		} else {
			picture(shape, paint, graphics);
		}
		return null;
	}

	@Override
	public Shape transformShapeBeforeDraw(Shape shape, IDrawControlEnv env) {
		if (isKnown(env.getPaint(), env.getGraphics())) {
			return shape;
		}
		env.getGraphics().fill(env.getGraphics().getStroke().createStrokedShape(shape));
		return null;
	}

	@Override
	public void afterShapeFill(Shape shape, IDrawControlEnv env) {
		// nothing of it is kept
	}

	@Override
	public void afterShapeDraw(Shape shape, IDrawControlEnv env) {
		// nothing of it is kept
	}

	private void picture(Shape shape, Paint paint, PdfBoxGraphics2D graphics) {
		AffineTransform transform = graphics.getTransform();
		Rectangle box = transform.createTransformedShape(shape).getBounds();
		box.grow(1, 1);
		box = box.intersection(page);
		if (box.isEmpty()) {
			return;
		}
		pixels++;
		BufferedImage image = new BufferedImage(box.width, box.height, BufferedImage.TYPE_INT_ARGB);
		Graphics2D drawn = image.createGraphics();
		drawn.addRenderingHints(graphics.getRenderingHints());
		drawn.translate(-box.x, -box.y);
		drawn.transform(transform);
		drawn.setPaint(new PaintOfPiece(paint, box.x, box.y));
		drawn.fill(shape);
		drawn.dispose();
		graphics.setTransform(new AffineTransform());
		graphics.drawImage(image, box.x, box.y, null);
		graphics.setTransform(transform);
	}

	/** Patterns of pixels are known to the library too, but come out in other places. */
	private static boolean isKnown(Paint paint, PdfBoxGraphics2D graphics) {
		if (paint instanceof MultipleGradientPaint gradient) {
			AffineTransform place = graphics.getTransform();
			place.concatenate(gradient.getTransform());
			return ends(gradient) && isPlain(gradient)
					&& (gradient instanceof LinearGradientPaint linear ? staysUpright(linear, place)
							: gradient instanceof RadialGradientPaint radial && staysRound(radial, place));
		}
		return paint instanceof Color || paint instanceof GradientPaint;
	}

	/** Whether it does not begin anew. */
	private static boolean ends(MultipleGradientPaint gradient) {
		return gradient.getCycleMethod() == MultipleGradientPaint.CycleMethod.NO_CYCLE;
	}

	private static boolean isPlain(MultipleGradientPaint gradient) {
		return gradient.getColorSpace() == MultipleGradientPaint.ColorSpaceType.SRGB;
	}

	/** Only two ends of a gradient are carried over: its colours lie upright between them in PDF, however they did before. */
	private static boolean staysUpright(LinearGradientPaint gradient, AffineTransform place) {
		double x = gradient.getEndPoint().getX() - gradient.getStartPoint().getX();
		double y = gradient.getEndPoint().getY() - gradient.getStartPoint().getY();
		double[] ways = { x, y, -y, x };
		place.deltaTransform(ways, 0, ways, 0, 2);
		return Math.abs(ways[0] * ways[2] + ways[1] * ways[3]) <= SAME * Math.hypot(ways[0], ways[1])
				* Math.hypot(ways[2], ways[3]);
	}

	/** Of a circle, only middle, focus and scale across are carried over. */
	private static boolean staysRound(RadialGradientPaint gradient, AffineTransform place) {
		double across = Math.abs(place.getScaleX());
		return gradient.getFocusPoint().distance(gradient.getCenterPoint()) <= WITHIN * gradient.getRadius()
				&& Math.abs(place.getShearX()) <= SAME * across && Math.abs(place.getShearY()) <= SAME * across
				&& Math.abs(Math.abs(place.getScaleY()) - across) <= SAME * across;
	}
}
