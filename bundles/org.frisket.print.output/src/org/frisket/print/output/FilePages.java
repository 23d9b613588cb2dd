package org.frisket.print.output;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.frisket.export.pdf.PageFrame;
import org.frisket.export.pdf.Step;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.model.OperationKind;

/**
 * The pages of a print file as pixels: what is seen of it on the screen, and what is sent straight to a printer.
 * They are read from the file's own bytes, so that nobody can see or print anything else than what the file holds.
 * The file is kept in memory, with its pictures packed as they are in it; only the piece that is asked for is ever
 * unpacked to pixels.
 */
public final class FilePages implements AutoCloseable {

	private final PDDocument document;
	private final PDFRenderer renderer;
	private final double unitsPerMm;

	private FilePages(PDDocument document, double unitsPerMm) {
		this.document = document;
		this.unitsPerMm = unitsPerMm;
		renderer = new PDFRenderer(document);
	}

	/**
	 * Takes its time.
	 *
	 * @throws IOException if a picture of the sheet cannot be read
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static FilePages of(PrintSheet sheet, Monitor monitor) throws IOException {
		ByteArrayOutputStream file = new ByteArrayOutputStream();
		PrintFile.write(sheet, monitor, file);
		Bounds page = sheet.faces().page();
		return new FilePages(Loader.loadPDF(file.toByteArray()), PageFrame.of(page, page).scale());
	}

	/** The front, and the back if anything is on it. */
	public int count() {
		return document.getNumberOfPages();
	}

	/** Shows the art or leaves it out. */
	public void showArt(boolean shown) {
		show(Step.of(OperationKind.PRINT).name(), shown);
	}

	/** Shows marks, code and ruler or leaves them out. */
	public void showMarks(boolean shown) {
		List.of(Messages.PrintContent_marks, Messages.PrintContent_code, Messages.PrintContent_ruler)
				.forEach(each -> show(each, shown));
	}

	private void show(String group, boolean shown) {
		PDOptionalContentProperties groups = document.getDocumentCatalog().getOCProperties();
		if (groups != null && groups.hasGroup(group)) {
			groups.setGroupEnabled(group, shown);
		}
	}

	/**
	 * A piece of a page.
	 *
	 * @param page       from 0
	 * @param piece      in mm from the upper left corner of the page; it may reach beyond it
	 * @param width      of the image, in pixels, as {@code height}
	 * @param seeThrough whether there is nothing where nothing is printed, instead of white
	 * @throws IOException if a picture on it cannot be decoded
	 */
	public BufferedImage image(int page, Bounds piece, int width, int height, boolean seeThrough) throws IOException {
		BufferedImage image = new BufferedImage(width, height,
				seeThrough ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
		double across = width / piece.width();
		double down = height / piece.height();
		Graphics2D graphics = image.createGraphics();
		try {
			if (!seeThrough) {
				graphics.setColor(Color.WHITE);
				graphics.fillRect(0, 0, width, height);
			}
			// the renderer clears the page's box before it paints, to what is the ground here
			graphics.setBackground(seeThrough ? new Color(0, true) : Color.WHITE);
			graphics.translate(-piece.minX() * across, -piece.minY() * down);
			renderer.renderPageToGraphics(page, graphics, (float) (across / unitsPerMm), (float) (down / unitsPerMm));
		} finally {
			graphics.dispose();
		}
		return image;
	}

	@Override
	public void close() throws IOException {
		document.close();
	}
}
