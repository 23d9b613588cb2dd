package org.frisket.export.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.model.Layer;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.page.Ink;
import org.frisket.page.PdfWords;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.PreparedPicture;

/**
 * What is on the page: printed things first, then a group for each step. Steps are stroked and never filled, with unbroken
 * lines, so that a machine finds none that is only a look; a crease or perforation that is worked in dashes is drawn in them.
 */
public final class PageContent implements AutoCloseable {

	private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");
	/** The unit square of a PDF's pictures has its first row at the top. */
	private static final Transform UPRIGHT = new Transform(1, 0, 0, -1, 0, 1);
	private static final double LABEL_CAPITAL = 2;
	private static final double LABEL_SPACE = 1.5;

	private final PdfFile file;
	private final PageFrame frame;
	private final Transform toPage;
	private final float lineWidth;
	private final PDPageContentStream stream;
	private final PDExtendedGraphicsState overprint = overprint();
	private final Map<Step, PDColor> separations = new HashMap<>();

	/** @param lineWidth in mm */
	PageContent(PdfFile file, PageFrame frame, double lineWidth) throws IOException {
		this(file, file.page(), frame, lineWidth);
	}

	/** Above what is on a page already. @param lineWidth in mm */
	public PageContent(PdfFile file, PDPage page, PageFrame frame, double lineWidth) throws IOException {
		this.file = file;
		this.frame = frame;
		this.lineWidth = (float) (lineWidth * frame.scale());
		toPage = frame.toPage();
		stream = page.hasContents() ? new PDPageContentStream(file.document(), page, AppendMode.APPEND, true, true)
				: new PDPageContentStream(file.document(), page);
	}

	/** Pictures, and regions and lines in the colour of their layer. */
	void artwork(PreparedJob job, Monitor monitor) throws IOException {
		Step step = Step.of(OperationKind.PRINT);
		paint(job, OperationKind.PRINT, step, monitor, (layer, element, operation) -> {
			Optional<PreparedPicture> picture = element.picture();
			if (picture.isPresent()) {
				picture(picture.get(), element.printedPieces(), monitor);
			} else {
				printed(layer.layer(), element, step);
			}
		});
	}

	/** What machines do. */
	public void steps(PreparedJob job, Monitor monitor) throws IOException {
		int done = 0;
		for (OperationKind kind : Step.WORKED) {
			monitor.worked((double) done++ / Step.WORKED.size());
			paint(job, kind, Step.of(kind), monitor, (layer, element, operation) -> {
				List<Contour> dashes = element.dashes(operation);
				if (dashes.isEmpty()) {
					stroke(element.region().contours());
					stroke(element.lines());
				} else {
					stroke(dashes);
				}
			});
		}
	}

	/** What is done with one element. */
	private interface Painting {
		void paint(PreparedLayer layer, PreparedElement element, Operation operation) throws IOException;
	}

	private void paint(PreparedJob job, OperationKind kind, Step step, Monitor monitor, Painting painting)
			throws IOException {
		boolean open = false;
		boolean several = hasSeveral(job);
		for (PreparedLayer layer : job.layers()) {
			List<PreparedElement> elements = layer.shown().stream().filter(element -> element.has(kind)).toList();
			if (elements.isEmpty()) {
				continue;
			}
			if (!open) {
				open(step);
				open = true;
			}
			if (several) {
				stream.beginMarkedContent(COSName.OC, file.group(layer.layer()));
			}
			for (PreparedElement element : elements) {
				monitor.check();
				// the same line twice would be worked twice
				painting.paint(layer, element, element.operations().stream()
						.filter(operation -> operation.getKind() == kind).findFirst().orElseThrow());
			}
			if (several) {
				stream.endMarkedContent();
			}
		}
		if (open) {
			closeStep();
		}
	}

	/** Whether there are layers to tell apart. */
	private static boolean hasSeveral(PreparedJob job) {
		return job.layers().stream().filter(layer -> layer.shown().stream()
				.anyMatch(element -> !element.operations().isEmpty())).count() > 1;
	}

	private void open(Step step) throws IOException {
		stream.beginMarkedContent(COSName.OC, file.group(step));
		stream.saveGraphicsState();
		stream.setLineWidth(lineWidth);
		if (!step.colorant().isEmpty()) {
			stream.setGraphicsStateParameters(overprint);
			stream.setStrokingColor(separations.computeIfAbsent(step, Separations::of));
		}
	}

	private void closeStep() throws IOException {
		stream.restoreGraphicsState();
		stream.endMarkedContent();
	}

	/** Lines for a machine leave what is printed below them as it is. */
	private static PDExtendedGraphicsState overprint() {
		PDExtendedGraphicsState state = new PDExtendedGraphicsState();
		state.setStrokingOverprintControl(true);
		state.setNonStrokingOverprintControl(true);
		state.setOverprintMode(1);
		return state;
	}

	private void printed(Layer layer, PreparedElement element, Step step) throws IOException {
		String colour = layer.getColour() != null && COLOUR.matcher(layer.getColour()).matches() ? layer.getColour()
				: step.colour();
		PDColor ink = new PDColor(Ink.rgb(colour), PDDeviceRGB.INSTANCE);
		if (trace(element.region().contours())) {
			stream.setNonStrokingColor(ink);
			stream.fill();
		}
		if (trace(element.lines())) {
			stream.setStrokingColor(ink);
			stream.stroke();
		}
	}

	/** @param pieces that it is cut off at; empty for the whole picture */
	private void picture(PreparedPicture picture, Optional<Region> pieces, Monitor monitor) throws IOException {
		Transform place = UPRIGHT.then(picture.place()).then(toPage);
		stream.saveGraphicsState();
		if (pieces.isPresent() && trace(pieces.get().contours())) {
			stream.clip();
		}
		stream.transform(new Matrix(new AffineTransform(place.a(), place.b(), place.c(), place.d(), place.e(),
				place.f())));
		PDXObject object = file.pictures().object(picture.image(), picture.page(), picture.width(), monitor);
		if (object instanceof PDFormXObject form) {
			stream.drawForm(form);
		} else {
			stream.drawImage((PDImageXObject) object, 0, 0, 1, 1);
		}
		stream.restoreGraphicsState();
	}

	private void stroke(List<Contour> contours) throws IOException {
		if (trace(contours)) {
			stream.stroke();
		}
	}

	private boolean trace(List<Contour> contours) throws IOException {
		return PagePath.trace(contours, toPage, stream);
	}

	/** One line of words along the lower edge of the page. */
	void label(String text) throws IOException {
		Step step = Step.label();
		open(step);
		stream.setNonStrokingColor(separations.get(step));
		double scale = frame.scale();
		PdfWords words = new PdfWords(file.document());
		words.show(stream, text, LABEL_SPACE * scale, LABEL_SPACE * scale, LABEL_CAPITAL * scale,
				frame.width() - 2 * LABEL_SPACE * scale, false);
		closeStep();
	}

	@Override
	public void close() throws IOException {
		stream.close();
	}
}
