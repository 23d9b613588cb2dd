package org.frisket.page;

import java.awt.geom.AffineTransform;
import java.io.ByteArrayInputStream;
import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;
import org.frisket.typography.FontFace;

/** Words on the pages of one PDF document: text that can be found, in the font of the pages, which is embedded. */
public final class PdfWords {

	private final FontFace face;
	private final PDFont font;

	/** @throws IOException if this installation lacks the font */
	public PdfWords(PDDocument document) throws IOException {
		face = Labels.face();
		font = PDType0Font.load(document, new ByteArrayInputStream(face.bytes()), true);
	}

	/**
	 * One line in the colour that the stream fills with. Lengths are in the units of the stream. What the font lacks is
	 * written as a question mark; a line that is too long is set narrower.
	 *
	 * @param x         left end
	 * @param baseline  y of it
	 * @param capHeight of its capitals
	 * @param room      how wide it may be
	 * @param down      whether y runs down; letters stand upright then too
	 */
	public void show(PDPageContentStream stream, String text, double x, double baseline, double capHeight, double room,
			boolean down) throws IOException {
		String writable = Labels.writable(text, face);
		if (writable.isBlank()) {
			return;
		}
		double size = capHeight * face.unitsPerEm() / face.capHeight();
		double width = width(writable, size);
		double narrower = width > room ? room / width : 1;
		stream.beginText();
		stream.setFont(font, (float) size);
		stream.setTextMatrix(new Matrix(new AffineTransform(narrower, 0, 0, down ? -1 : 1, x, baseline)));
		stream.showText(writable);
		stream.endText();
	}

	private double width(String writable, double size) throws IOException {
		return font.getStringWidth(writable) / 1000 * size;
	}
}
