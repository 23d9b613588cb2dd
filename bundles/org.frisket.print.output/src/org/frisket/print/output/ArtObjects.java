package org.frisket.print.output;

import java.awt.image.BufferedImage;
import java.io.IOException;

import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.frisket.export.pdf.PdfFile;
import org.frisket.export.pdf.PictureObjects;
import org.frisket.geometry.Monitor;
import org.frisket.model.ImageBytes;

/** The pictures of printed art as {@linkplain PictureObjects objects} of a print file. */
final class ArtObjects {

	private final PictureObjects objects;

	ArtObjects(PdfFile pdf) {
		objects = pdf.pictures();
	}

	PDXObject object(PrintedArt art, Monitor monitor) throws IOException {
		return objects.object(image(art), art.page(), art.picture().orElseThrow().width(), monitor);
	}

	/** Its pixels, as many as it has if they are fewer. @param width in pixels */
	BufferedImage pixels(PrintedArt art, int width, Monitor monitor) throws IOException {
		return objects.pixels(image(art), art.page(), width, monitor);
	}

	/** How wide it is in pixels; of what has none, as it would have to be. */
	int width(PrintedArt art) throws IOException {
		return objects.width(image(art), art.page(), art.picture().orElseThrow().width());
	}

	private static ImageBytes image(PrintedArt art) {
		return art.picture().orElseThrow().image();
	}
}
