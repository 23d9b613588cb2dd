package org.frisket.export.pdf;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.LinearGradientPaint;
import java.awt.MultipleGradientPaint;
import java.awt.Paint;
import java.awt.RadialGradientPaint;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.Optional;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShading;
import org.frisket.geometry.Monitor;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.UnreadablePictureException;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DPaintApplier;

/**
 * An SVG as vectors of a PDF, in a form that fills the unit square. What only pixels can show, such as blur, is a picture
 * within it, as fine as the art is drawn.
 */
final class SvgForm {

	private SvgForm() {
	}

	/** Empty if it has colours that the library cannot carry over as they are. */
	static Optional<PDFormXObject> of(PDDocument document, PictureFile art, Monitor monitor)
			throws IOException, UnreadablePictureException {
		PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, art.width(), art.height());
		graphics.setPaintApplier(new KnownPaints());
		try {
			art.draw(graphics, art.width(), art.height(), monitor);
		} catch (UnreadablePictureException e) {
			graphics.disposeDanglingChildGraphics();
			graphics.dispose();
			if (e.getCause() != null && e.getCause().getCause() instanceof UnknownPaint) {
				return Optional.empty();
			}
			throw e;
		}
		graphics.dispose();
		PDFormXObject form = graphics.getXFormObject();
		form.setMatrix(AffineTransform.getScaleInstance(1.0 / art.width(), 1.0 / art.height()));
		return Optional.of(form);
	}

	/** A colour that changes in a way that is not known to the library, which would leave it out. */
	private static final class UnknownPaint extends RuntimeException {

		private static final long serialVersionUID = 1L;
	}

	private static final class KnownPaints extends PdfBoxGraphics2DPaintApplier {

		/** Of a length; finer than it is seen. */
		private static final double SAME = 1e-3;
		/** Of a radius. Java draws a focus that is further out there; PDF draws a cone then. */
		private static final double WITHIN = 0.99;

		@Override
		public PDShading applyPaint(Paint paint, PDPageContentStream stream, AffineTransform transform, IPaintEnv env)
				throws IOException {
			if (!isKnown(paint, transform)) {
				throw new UnknownPaint();
			}
			return super.applyPaint(paint, stream, transform, env);
		}

		/** In PDF, colours go on or end beyond a gradient, but are never repeated. Patterns come out in other places. */
		private static boolean isKnown(Paint paint, AffineTransform transform) {
			if (paint instanceof MultipleGradientPaint gradient) {
				AffineTransform place = new AffineTransform(transform);
				place.concatenate(gradient.getTransform());
				return gradient.getCycleMethod() == MultipleGradientPaint.CycleMethod.NO_CYCLE
						&& gradient.getColorSpace() == MultipleGradientPaint.ColorSpaceType.SRGB
						&& (gradient instanceof LinearGradientPaint linear ? staysUpright(linear, place)
								: gradient instanceof RadialGradientPaint radial && staysRound(radial, place));
			}
			return paint instanceof Color || paint instanceof GradientPaint;
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
}
