package org.frisket.print.picture;

import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Files of PDF with pages of our own. */
final class MadePdf implements AutoCloseable {

	/** Units of a page in a mm. */
	static final float MM = 72 / 25.4f;

	final PDDocument document = new PDDocument();

	/** What is painted on a page. */
	interface Painting {
		void on(PDPageContentStream stream) throws IOException;
	}

	/** A page of so many mm, its lower left corner at a place in mm, which nothing should depend on. */
	PDPage page(float x, float y, float width, float height, Painting painting) throws IOException {
		PDPage page = new PDPage(new PDRectangle(x * MM, y * MM, width * MM, height * MM));
		document.addPage(page);
		try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
			painting.on(stream);
		}
		return page;
	}

	/** A rectangle in mm from the lower left corner of a page that begins at the origin. */
	static void rectangle(PDPageContentStream stream, float red, float green, float blue, float... box) throws IOException {
		stream.setNonStrokingColor(red, green, blue);
		stream.addRect(box[0] * MM, box[1] * MM, box[2] * MM, box[3] * MM);
		stream.fill();
	}

	byte[] bytes() throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		document.save(out);
		return out.toByteArray();
	}

	@Override
	public void close() throws IOException {
		document.close();
	}
}
