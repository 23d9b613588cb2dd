package org.frisket.export.pdf;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.MultipleGradientPaint;
import java.awt.Paint;
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

		@Override
		public PDShading applyPaint(Paint paint, PDPageContentStream stream, AffineTransform transform, IPaintEnv env)
				throws IOException {
			if (!isKnown(paint)) {
				throw new UnknownPaint();
			}
			return super.applyPaint(paint, stream, transform, env);
		}

		/** In PDF, colours go on or end beyond a gradient, but are never repeated. Patterns come out in other places. */
		private static boolean isKnown(Paint paint) {
			if (paint instanceof MultipleGradientPaint gradient) {
				return gradient.getCycleMethod() == MultipleGradientPaint.CycleMethod.NO_CYCLE
						&& gradient.getColorSpace() == MultipleGradientPaint.ColorSpaceType.SRGB;
			}
			return paint instanceof Color || paint instanceof GradientPaint;
		}
	}
}
