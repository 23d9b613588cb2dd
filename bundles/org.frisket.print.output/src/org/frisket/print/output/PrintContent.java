package org.frisket.print.output;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;
import org.frisket.export.pdf.PagePath;
import org.frisket.export.pdf.PdfFile;
import org.frisket.export.pdf.Step;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Length;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.OperationKind;
import org.frisket.page.Ink;
import org.frisket.page.PdfWords;
import org.frisket.prepare.PreparedPicture;
import org.frisket.print.marks.Mark;

/** What is on a page of a print file: art, then marks, code and ruler, each in a group of its own. */
final class PrintContent implements AutoCloseable {

	/** The unit square of a PDF's pictures has its first row at the top. */
	private static final Transform UPRIGHT = new Transform(1, 0, 0, -1, 0, 1);
	private static final PDColor BLACK = new PDColor(new float[] { 0 }, PDDeviceGray.INSTANCE);
	/** Of printed lines that enclose nothing, mm, as the PDF exporter draws them. */
	private static final double LINE = 0.1;
	/** How far what goes on beyond vectors lies on them, mm: a little more than a pixel of common printers. */
	private static final double COVERED = 0.1;

	private final PdfFile file;
	private final ArtObjects objects;
	private final Transform toPage;
	private final double scale;
	private final PDPageContentStream stream;

	/** @param toPage from the sheet, as seen from the front @param scale units of the page in a mm */
	PrintContent(PdfFile file, PDPage page, Transform toPage, double scale) throws IOException {
		this.file = file;
		objects = new ArtObjects(file);
		this.toPage = toPage;
		this.scale = scale;
		stream = new PDPageContentStream(file.document(), page);
	}

	void art(List<PrintedArt> art, Monitor monitor) throws IOException {
		open(Step.of(OperationKind.PRINT));
		stream.setLineWidth((float) (LINE * scale));
		for (PrintedArt each : art) {
			monitor.check();
			if (each.picture().isPresent()) {
				picture(each, each.picture().get(), monitor);
			} else {
				PDColor ink = new PDColor(Ink.rgb(each.colour()), PDDeviceRGB.INSTANCE);
				fill(each.area().contours(), ink);
				if (PagePath.trace(each.lines(), toPage, stream)) {
					stream.setStrokingColor(ink);
					stream.stroke();
				}
			}
		}
		shut();
	}

	private void picture(PrintedArt art, PreparedPicture picture, Monitor monitor) throws IOException {
		PDXObject object = objects.object(art, monitor);
		if (!art.goesOn()) {
			clipped(art.clipped() ? art.area().contours() : null, object, picture.place());
			return;
		}
		EdgeExtension edge = EdgeExtension.of(art, objects, monitor);
		PDImageXObject beyond = LosslessFactory.createFromImage(file.document(), edge.image());
		if (object instanceof PDFormXObject) {
			// shapes that end at the edge one above the other let each other shine through there: it is covered
			Region inner = Offset.of(art.own(), -COVERED, Corners.MITRE, Holes.KEEP, Tolerance.DEFAULT, monitor);
			clipped(art.own().contours(), object, picture.place());
			clipped(Stream.concat(art.area().contours().stream(), inner.contours().stream()).toList(), beyond, edge.place());
		} else {
			clipped(art.area().contours(), beyond, edge.place());
			clipped(art.own().contours(), object, picture.place());
		}
	}

	/** @param clip by even and odd, null for the whole of it @param object that fills the unit square */
	private void clipped(List<Contour> clip, PDXObject object, Transform place) throws IOException {
		stream.saveGraphicsState();
		if (clip != null) {
			if (!PagePath.trace(clip, toPage, stream)) {
				stream.restoreGraphicsState();
				return;
			}
			stream.clipEvenOdd();
		}
		Transform matrix = UPRIGHT.then(place).then(toPage);
		stream.transform(new Matrix(new AffineTransform(matrix.a(), matrix.b(), matrix.c(), matrix.d(), matrix.e(), matrix.f())));
		if (object instanceof PDFormXObject form) {
			stream.drawForm(form);
		} else {
			stream.drawImage((PDImageXObject) object, 0, 0, 1, 1);
		}
		stream.restoreGraphicsState();
	}

	/** Each region by itself: an even-odd or nonzero reader sees the same. */
	void marks(List<Mark> marks) throws IOException {
		group(Messages.PrintContent_marks, marks.stream().map(Mark::region).map(Region::contours).toList());
	}

	/**
	 * A code that was mirrored would be read by some and not by others: it is set upright in its place.
	 *
	 * @param turned how the page was turned over
	 */
	void code(PrintSheet.PlacedCode code, Transform turned) throws IOException {
		Point middle = code.square().centre();
		Transform upright = Transform.translation(-middle.x(), -middle.y())
				.then(new Transform(turned.a(), 0, 0, turned.d(), 0, 0)).then(Transform.translation(middle.x(), middle.y()));
		group(Messages.PrintContent_code, List.of(code.code().modules(code.square()).transformed(upright).contours()));
	}

	/** Its length is written upright, whichever side is printed. */
	void ruler(ScaleRuler ruler) throws IOException {
		open(Step.printed(Messages.PrintContent_ruler));
		fill(ruler.region().contours(), BLACK);
		Bounds caption = ruler.caption();
		Point one = toPage.apply(new Point(caption.minX(), caption.minY()));
		Point other = toPage.apply(new Point(caption.maxX(), caption.maxY()));
		new PdfWords(file.document()).show(stream, Length.text(ScaleRuler.LENGTH, 0), Math.min(one.x(), other.x()),
				Math.min(one.y(), other.y()), caption.height() * scale, caption.width() * scale, false);
		shut();
	}

	private void group(String name, List<List<Contour>> shapes) throws IOException {
		open(Step.printed(name));
		for (List<Contour> shape : shapes) {
			fill(shape, BLACK);
		}
		shut();
	}

	private void fill(List<Contour> contours, PDColor ink) throws IOException {
		if (PagePath.trace(contours, toPage, stream)) {
			stream.setNonStrokingColor(ink);
			stream.fill();
		}
	}

	private void open(Step step) throws IOException {
		stream.beginMarkedContent(COSName.OC, file.group(step));
		stream.saveGraphicsState();
	}

	private void shut() throws IOException {
		stream.restoreGraphicsState();
		stream.endMarkedContent();
	}

	@Override
	public void close() throws IOException {
		stream.close();
	}
}
