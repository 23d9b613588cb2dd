package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.axis.Centreline;
import org.frisket.geometry.fill.HatchFill;
import org.frisket.model.Wording;
import org.frisket.prepare.Severity;
import org.frisket.prepare.internal.Shape;

/** What a pen draws of letters. */
final class PenLines {

	/** Finer than any pen draws. */
	private static final double FINEST = 0.05;
	private static final int MOST_LINES = 20_000;

	private PenLines() {
	}

	/** Empty for letters of which the outlines are worked. */
	static List<Contour> of(Region body, Wording wording, List<Shape.Remark> remarks, Tolerance tolerance,
			Monitor monitor) {
		return switch (wording.getPenStyle()) {
		case OUTLINE -> List.of();
		case CENTRELINE -> Centreline.of(body, 0, tolerance, monitor);
		case HATCHED -> hatched(body, wording, remarks, tolerance, monitor);
		};
	}

	private static List<Contour> hatched(Region body, Wording wording, List<Shape.Remark> remarks, Tolerance tolerance,
			Monitor monitor) {
		List<Contour> lines = new ArrayList<>(body.contours());
		Bounds bounds = body.bounds();
		double spacing = wording.getHatchSpacing();
		if (spacing < FINEST || Math.hypot(bounds.width(), bounds.height()) > MOST_LINES * spacing) {
			remarks.add(new Shape.Remark("hatching-too-fine", Severity.CAUTION, bounds.centre(),
					Messages.PenLines_fine, Messages.PenLines_fineCure));
			return lines;
		}
		double inset = Math.max(0, wording.getHatchInset());
		lines.addAll(new HatchFill(spacing, Math.toRadians(wording.getHatchAngle()), inset).of(body, tolerance, monitor));
		return lines;
	}
}
