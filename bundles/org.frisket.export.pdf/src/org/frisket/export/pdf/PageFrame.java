package org.frisket.export.pdf;

import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.frisket.export.Handoff;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Transform;

/**
 * From the job's millimetres, y down, to the units of the page, y up from its lower left corner.
 *
 * @param page  what the file shows
 * @param trim  what is left when the margin is cut off
 * @param units 1/72 inch each, in a unit of the page: 1, but for pages that would be larger than readers allow
 */
public record PageFrame(Bounds page, Bounds trim, int units) {

	private static final double POINTS_PER_MM = 72 / 25.4;
	/** The largest and the smallest side in units: ISO 32000-1, annex C.2. */
	private static final double MOST = 14_400;
	private static final double LEAST = 3;

	static PageFrame of(Handoff handoff, double margin) {
		return of(handoff.page(margin), handoff.page(0));
	}

	public static PageFrame of(Bounds page, Bounds trim) {
		double longest = Math.max(page.width(), page.height()) * POINTS_PER_MM;
		return new PageFrame(page, trim, (int) Math.max(1, Math.ceil(longest / MOST)));
	}

	/** Units of the page in a millimetre. */
	public double scale() {
		return POINTS_PER_MM / units;
	}

	double width() {
		return Math.max(LEAST, page.width() * scale());
	}

	double height() {
		return Math.max(LEAST, page.height() * scale());
	}

	public Transform toPage() {
		double scale = scale();
		return new Transform(scale, 0, 0, -scale, -page.minX() * scale, height() + page.minY() * scale);
	}

	PDRectangle mediaBox() {
		return new PDRectangle((float) width(), (float) height());
	}

	PDRectangle trimBox() {
		return box(trim);
	}

	/** A part of the page as one of its boxes. */
	public PDRectangle box(Bounds part) {
		double scale = scale();
		return new PDRectangle((float) ((part.minX() - page.minX()) * scale),
				(float) (height() - (part.maxY() - page.minY()) * scale), (float) (part.width() * scale),
				(float) (part.height() * scale));
	}

	/** Whether anything is left when the margin is cut off. */
	boolean hasTrim() {
		return trim.width() > 0 && trim.height() > 0;
	}
}
