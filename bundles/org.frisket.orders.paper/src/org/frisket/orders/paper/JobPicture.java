package org.frisket.orders.paper;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.page.Ink;
import org.frisket.page.PagePainter;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.PreparedPicture;
import org.frisket.prepare.pictures.PictureFile;

/**
 * A job as it will look: parts in the colours of their layers, and on them the lines of what is done.
 *
 * @param scale mm of paper to one of the job
 */
record JobPicture(PreparedJob job, double scale) {

	private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");
	private static final double PRINTED = 0.8;
	/** Of pictures on paper, which is enough for the eye. */
	private static final double PIXELS_PER_MM = 200 / 25.4;
	/** Of art without pixels of its own: its lines and small letters stay sharp. */
	private static final double DRAWN_PER_MM = 600 / 25.4;
	private static final int FEWEST = 16;
	/** Of the longer side of a picture: A4 at 500 dots to the inch. */
	private static final int MOST = 6000;

	Bounds bounds() {
		return job.visibleBounds();
	}

	double width() {
		return bounds().width() * scale;
	}

	double height() {
		return bounds().height() * scale;
	}

	/** @param left of it on the page @param top of it, in mm */
	void paint(PagePainter painter, double left, double top) throws IOException {
		Bounds shown = bounds();
		Transform place = new Transform(scale, 0, 0, scale, left - shown.minX() * scale, top - shown.minY() * scale);
		for (PreparedLayer layer : job.layers()) {
			for (PreparedElement element : layer.shown()) {
				paint(painter, element, layer.layer().getColour(), place);
			}
		}
	}

	private static void paint(PagePainter painter, PreparedElement element, String colour, Transform place)
			throws IOException {
		Outline region = element.region().transformed(place).toOutline();
		Outline lines = new Outline(element.lines()).transformed(place);
		boolean part = element.has(OperationKind.CUT) || element.has(OperationKind.KISS_CUT);
		if (part && colour != null && COLOUR.matcher(colour).matches()) {
			painter.fill(region, colour);
		}
		boolean pixels = element.picture().isPresent() && (element.isWithoutEdge() || element.has(OperationKind.PRINT));
		if (pixels) {
			picture(painter, element.picture().get(), place);
		}
		for (Operation operation : element.operations()) {
			if (pixels && operation.getKind() == OperationKind.PRINT) {
				continue;
			}
			if (operation.getKind() == OperationKind.PRINT) {
				painter.fill(region, PRINTED);
			}
			List<Contour> dashes = element.dashes(operation);
			if (dashes.isEmpty()) {
				painter.stroke(region, Ink.of(operation.getKind()));
				painter.stroke(lines, Ink.of(operation.getKind()));
			} else {
				Ink ink = Ink.of(operation.getKind());
				painter.stroke(new Outline(dashes).transformed(place), new Ink(ink.colour(), ink.width(), List.of()));
			}
		}
	}

	private static void picture(PagePainter painter, PreparedPicture picture, Transform place) throws IOException {
		Transform there = picture.place().then(place);
		PictureFile file = picture.file();
		double longest = Math.max(Math.hypot(there.a(), there.b()), Math.hypot(there.c(), there.d()));
		double pixels = Math.ceil(Math.max(FEWEST, longest * (file.isDrawn() ? DRAWN_PER_MM : PIXELS_PER_MM)));
		painter.picture(file.decode((int) Math.min(MOST, pixels)).image(), there);
	}
}
