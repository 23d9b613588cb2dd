package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** A closed contour with what is needed to tell whether another one lies in it. */
final class Ring {

	/** More than sums of lengths can be off by. */
	private static final double ROUNDING = 1 + 1e-6;

	final Contour contour;
	/** Signed; negative for an outer contour. */
	final double area;
	/** What one turn along the contour adds to the {@linkplain Winding winding}. */
	final int winding;
	private final Bounds bounds;
	private List<Span> spans;

	Ring(Contour contour, int winding) {
		this.contour = contour;
		this.winding = winding;
		this.area = contour.signedArea();
		this.bounds = contour.bounds();
	}

	boolean isOuter() {
		return area < 0;
	}

	/** Whether it lies within a square of this side, or is on average narrower than half of it. */
	boolean isSpeck(double side) {
		return bounds.width() < side && bounds.height() < side
				|| 4 * Math.abs(area) < side * reach() && 4 * Math.abs(area) < side * contour.length();
	}

	/** No shorter than the contour; its length itself takes an integral for each curve. */
	private double reach() {
		double sum = 0;
		for (Segment segment : contour.segments()) {
			sum += ShortSegments.polygonLength(segment);
		}
		return sum * ROUNDING;
	}

	/** For contours that do not cross. */
	boolean holds(Ring other) {
		Point place = other.contour.start();
		return Math.abs(area) > Math.abs(other.area) && bounds.contains(place) && winds(place);
	}

	private boolean winds(Point place) {
		boolean inside = false;
		for (Span span : spans()) {
			if (span.crosses(place.y()) && (span.maxX < place.x() || span.minX <= place.x()
					&& span.segment.at(span.parameterAt(place.y())).x() < place.x())) {
				inside = !inside;
			}
		}
		return inside;
	}

	private List<Span> spans() {
		if (spans == null) {
			spans = new ArrayList<>();
			for (Segment segment : contour.segments()) {
				Span.cut(segment, spans);
			}
		}
		return spans;
	}
}
