package org.frisket.export.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.frisket.geometry.Monitor;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.UnreadablePictureException;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;

/**
 * An SVG as vectors of a PDF, in a form that fills the unit square. What only pixels can show, such as blur or what is seen
 * through a mask, is a picture within it, as fine as the art is drawn; all else of it stays vectors.
 *
 * @param form   it
 * @param pixels how many of its shapes are pictures
 */
record SvgForm(PDFormXObject form, int pixels) {

	static SvgForm of(PDDocument document, PictureFile art, Monitor monitor) throws IOException, UnreadablePictureException {
		return of(document, art, art.width(), art.height(), monitor);
	}

	/** How many shapes of it would be pictures. Draws it in little, for nobody. */
	static int pixels(PictureFile art, Monitor monitor) throws IOException, UnreadablePictureException {
		int longest = 200;
		double scale = Math.min(1, longest / (double) Math.max(art.width(), art.height()));
		try (PDDocument document = new PDDocument()) {
			return of(document, art, Math.max(1, (int) (scale * art.width())), Math.max(1, (int) (scale * art.height())), monitor)
					.pixels;
		}
	}

	private static SvgForm of(PDDocument document, PictureFile art, int width, int height, Monitor monitor)
			throws IOException, UnreadablePictureException {
		PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
		ShapesForPdf shapes = new ShapesForPdf(width, height);
		graphics.setDrawControl(shapes);
		try {
			art.draw(graphics, width, height, monitor);
		} catch (UnreadablePictureException e) {
			graphics.disposeDanglingChildGraphics();
			graphics.dispose();
			throw e;
		}
		graphics.dispose();
		PDFormXObject form = graphics.getXFormObject();
		form.setMatrix(AffineTransform.getScaleInstance(1.0 / width, 1.0 / height));
		return new SvgForm(form, shapes.pixels());
	}
}
