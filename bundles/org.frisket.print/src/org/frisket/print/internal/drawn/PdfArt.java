package org.frisket.print.internal.drawn;

import java.awt.Color;
import java.awt.Graphics2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.print.picture.PictureRemark;

/**
 * A page of a PDF file, drawn by PDFBox: what is in its crop box, turned as the page says. Notes and form fields that lie on
 * the page are no art; actions and scripts are never run.
 */
public final class PdfArt implements DrawnArt {

	private static final double MM_PER_UNIT = 25.4 / 72;
	/** The mark of its end stands within so many bytes of it (ISO 32000-1, 7.5.5 and what readers make of it). */
	private static final int TAIL = 1024;
	private static final String END = "%%EOF";

	private final byte[] file;
	private final int number;
	private final int pages;
	private final double width;
	private final double height;
	private final List<PictureRemark> remarks;

	private PdfArt(byte[] file, int number, PDDocument document) throws ArtException {
		this.file = file;
		this.number = number;
		pages = document.getNumberOfPages();
		if (number < 1 || number > pages) {
			throw new ArtException(NLS.bind(Messages.PdfArt_page, pages, number));
		}
		PDPage page = document.getPage(number - 1);
		PDRectangle box = page.getCropBox();
		boolean turned = page.getRotation() % 180 != 0;
		double unit = Math.max(1e-6, page.getUserUnit()) * MM_PER_UNIT;
		width = unit * (turned ? box.getHeight() : box.getWidth());
		height = unit * (turned ? box.getWidth() : box.getHeight());
		DrawnArt.requireSize(width, height);
		remarks = PdfScan.remarks(page, pages);
	}

	/**
	 * @param page from 1
	 * @throws ArtException if the file is damaged or encrypted, there is no such page, or it is of no sound size
	 */
	public static PdfArt of(byte[] file, int page) throws ArtException {
		try (PDDocument document = open(file)) {
			return new PdfArt(file, page, document);
		} catch (ArtException e) {
			throw e;
		} catch (IOException | RuntimeException e) {
			throw new ArtException(NLS.bind(Messages.PdfArt_damaged, reason(e)), e);
		}
	}

	private static PDDocument open(byte[] file) throws IOException {
		int tail = Math.min(file.length, TAIL);
		if (!new String(file, file.length - tail, tail, StandardCharsets.ISO_8859_1).contains(END)) {
			throw new ArtException(NLS.bind(Messages.PdfArt_brokenOff, file.length));
		}
		PDDocument document;
		try {
			document = Loader.loadPDF(file);
		} catch (InvalidPasswordException e) {
			throw new ArtException(Messages.PdfArt_encrypted, e);
		}
		if (document.isEncrypted()) {
			document.close();
			throw new ArtException(Messages.PdfArt_encrypted);
		}
		return document;
	}

	private static String reason(Throwable e) {
		return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
	}

	public int pages() {
		return pages;
	}

	@Override
	public double width() {
		return width;
	}

	@Override
	public double height() {
		return height;
	}

	@Override
	public List<PictureRemark> remarks() {
		return remarks;
	}

	@Override
	public void draw(Graphics2D graphics, double wide, double high, Monitor monitor) throws IOException {
		Graphics2D own = (Graphics2D) graphics.create();
		try (PDDocument document = open(file)) {
			PDPage page = document.getPage(number - 1);
			double unit = page.getUserUnit() * MM_PER_UNIT;
			PDFRenderer renderer = new Watched(document, new Work(monitor));
			renderer.setAnnotationsFilter(annotation -> false);
			renderer.setRenderingHints(ExactEdges.hints());
			// the ground is cleared to it first
			own.setBackground(new Color(0, true));
			renderer.renderPageToGraphics(number - 1, own, (float) (wide / width * unit), (float) (high / height * unit));
		} catch (CancellationException | ArtException e) {
			throw e;
		} catch (UncheckedIOException e) {
			throw e.getCause();
		} catch (IOException | RuntimeException e) {
			throw new ArtException(NLS.bind(Messages.PdfArt_damaged, reason(e)), e);
		} finally {
			own.dispose();
		}
	}

	private static final class Watched extends PDFRenderer {

		private final Work work;

		Watched(PDDocument document, Work work) {
			super(document);
			this.work = work;
		}

		@Override
		protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
			return new WatchedDrawer(parameters, work);
		}
	}
}
