package org.frisket.export.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.LayerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;

/**
 * A page of another PDF as a form that fills the unit square, text as text: its crop box, turned as the page says. Notes,
 * actions and whatever else is not painted stay behind. Its layers cannot be switched any more: those that were hidden are
 * hidden for good.
 */
final class PageForm {

	private PageForm() {
	}

	/** @param number of the page, from 1 @param group that all of it is in */
	static PDFormXObject of(PDDocument document, byte[] file, int number, PDOptionalContentGroup group) throws IOException {
		try (PDDocument other = Loader.loadPDF(file)) {
			PDPage page = other.getPage(number - 1);
			PDDocumentCatalog catalog = document.getDocumentCatalog();
			catalog.setOCProperties(null);
			PDFormXObject form = new LayerUtility(document).importPageAsForm(other, page);
			FixedLayers.of(catalog.getOCProperties(), group).fix(form);
			catalog.setOCProperties(null);
			form.setBBox(page.getCropBox());
			form.setMatrix(toUnitSquare(page.getCropBox(), page.getRotation()));
			return form;
		}
	}

	/** @param rotation clockwise, in degrees */
	static AffineTransform toUnitSquare(PDRectangle box, int rotation) {
		AffineTransform square = AffineTransform.getQuadrantRotateInstance(-rotation / 90, 0.5, 0.5);
		square.scale(1 / (double) box.getWidth(), 1 / (double) box.getHeight());
		square.translate(-box.getLowerLeftX(), -box.getLowerLeftY());
		return square;
	}
}
