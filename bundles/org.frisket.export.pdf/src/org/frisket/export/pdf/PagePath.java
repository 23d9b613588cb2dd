package org.frisket.export.pdf;

import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;

/** Contours as a path of a page. */
public final class PagePath {

	private PagePath() {
	}

	/** As one path, neither stroked nor filled yet; whether there is anything of it. */
	public static boolean trace(List<Contour> contours, Transform toPage, PDPageContentStream stream) throws IOException {
		boolean any = false;
		for (Contour contour : contours) {
			if (!contour.isEmpty()) {
				trace(contour, toPage, stream);
				any = true;
			}
		}
		return any;
	}

	private static void trace(Contour contour, Transform toPage, PDPageContentStream stream) throws IOException {
		Point start = toPage.apply(contour.start());
		stream.moveTo((float) start.x(), (float) start.y());
		List<Segment> segments = contour.segments();
		for (int i = 0; i < segments.size(); i++) {
			Segment segment = segments.get(i);
			Point end = toPage.apply(segment.end());
			if (segment instanceof Cubic c) {
				Point one = toPage.apply(c.control1());
				Point two = toPage.apply(c.control2());
				stream.curveTo((float) one.x(), (float) one.y(), (float) two.x(), (float) two.y(), (float) end.x(),
						(float) end.y());
			} else if (!contour.isClosed() || i < segments.size() - 1) {
				stream.lineTo((float) end.x(), (float) end.y());
			}
		}
		if (contour.isClosed()) {
			stream.closePath();
		}
	}
}
