package org.frisket.page;

import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.Optional;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.util.Matrix;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;
import org.frisket.prepare.layout.Paper;

/**
 * Pages as a PDF document: curves stay curves, and words are text that can be found, in an embedded font. The same pages
 * with the same title and identity make the same bytes: no clock is asked.
 */
public final class PdfPages implements AutoCloseable {

	private static final double POINTS_PER_MM = 72 / 25.4;
	private static final double LINE_WIDTH = 0.1;

	private final PDDocument document = new PDDocument();
	private final PdfWords words;

	/**
	 * @param identity what tells this document from others; it becomes the document's id
	 * @param date     when the document is said to be made; empty for nothing said
	 */
	public PdfPages(String title, String identity, Optional<LocalDate> date) throws IOException {
		try {
			words = new PdfWords(document);
		} catch (IOException | RuntimeException e) {
			document.close();
			throw e;
		}
		document.setDocumentId(id(identity));
		document.getDocumentInformation().setTitle(title);
		document.getDocumentInformation().setCreator("Frisket");
		date.ifPresent(day -> document.getDocumentInformation()
				.setCreationDate(GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC))));
	}

	private static long id(String identity) {
		try {
			return ByteBuffer.wrap(MessageDigest.getInstance("SHA-256")
					.digest(identity.getBytes(StandardCharsets.UTF_8))).getLong();
		} catch (NoSuchAlgorithmException never) {
			throw new AssertionError(never);
		}
	}

	/** What paints a page. */
	public interface Content {
		void paint(PagePainter painter) throws IOException;
	}

	/** One more page. */
	public void add(Paper paper, Content content) throws IOException {
		add(paper.width(), paper.height(), content);
	}

	/** One more page of this size, in mm. */
	public void add(double width, double height, Content content) throws IOException {
		PDPage page = new PDPage(new PDRectangle((float) (width * POINTS_PER_MM), (float) (height * POINTS_PER_MM)));
		document.addPage(page);
		try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
			stream.transform(new Matrix(new AffineTransform(POINTS_PER_MM, 0, 0, -POINTS_PER_MM, 0,
					height * POINTS_PER_MM)));
			stream.setLineWidth((float) LINE_WIDTH);
			content.paint(new Painter(stream));
		}
	}

	/** After this there are no further pages. */
	public void write(OutputStream out) throws IOException {
		document.save(out);
	}

	@Override
	public void close() throws IOException {
		document.close();
	}

	private final class Painter implements PagePainter {

		private final PDPageContentStream stream;

		Painter(PDPageContentStream stream) {
			this.stream = stream;
		}

		@Override
		public void fill(Outline outline, double grey) throws IOException {
			if (trace(outline)) {
				stream.setNonStrokingColor((float) grey);
				stream.fill();
			}
		}

		@Override
		public void fill(Outline outline, String colour) throws IOException {
			if (trace(outline)) {
				stream.setNonStrokingColor(new PDColor(Ink.rgb(colour), PDDeviceRGB.INSTANCE));
				stream.fill();
			}
		}

		@Override
		public void picture(BufferedImage image, Transform place) throws IOException {
			// the unit square of a PDF has y upwards
			Transform up = new Transform(1, 0, 0, -1, 0, 1).then(place);
			stream.drawImage(LosslessFactory.createFromImage(document, image), new Matrix(
					new AffineTransform(up.a(), up.b(), up.c(), up.d(), up.e(), up.f())));
		}

		@Override
		public void stroke(Outline outline, Ink ink) throws IOException {
			stream.saveGraphicsState();
			stream.setLineWidth((float) ink.width());
			stream.setLineDashPattern(ink.dashes(), 0);
			stream.setStrokingColor(new PDColor(ink.rgb(), PDDeviceRGB.INSTANCE));
			if (trace(outline)) {
				stream.stroke();
			}
			stream.restoreGraphicsState();
		}

		/** As one path; whether there is anything of it. */
		private boolean trace(Outline outline) throws IOException {
			boolean any = false;
			for (Contour contour : outline.contours()) {
				if (!contour.isEmpty()) {
					trace(contour);
					any = true;
				}
			}
			return any;
		}

		private void trace(Contour contour) throws IOException {
			stream.moveTo((float) contour.start().x(), (float) contour.start().y());
			for (Segment segment : contour.segments()) {
				if (segment instanceof Cubic c) {
					stream.curveTo((float) c.control1().x(), (float) c.control1().y(), (float) c.control2().x(),
							(float) c.control2().y(), (float) c.end().x(), (float) c.end().y());
				} else {
					stream.lineTo((float) segment.end().x(), (float) segment.end().y());
				}
			}
			if (contour.isClosed()) {
				stream.closePath();
			}
		}

		@Override
		public void frame(Bounds box, double grey) throws IOException {
			stream.setStrokingColor((float) grey);
			stream.addRect((float) box.minX(), (float) box.minY(), (float) box.width(), (float) box.height());
			stream.stroke();
		}

		@Override
		public void words(String text, double x, double baseline, double capHeight, double room, double grey)
				throws IOException {
			stream.setNonStrokingColor((float) grey);
			words.show(stream, text, x, baseline, capHeight, room, true);
		}
	}
}
