package org.frisket.ui.bench.internal.grips;

import java.text.NumberFormat;
import java.util.List;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.ChangeFlow;
import org.frisket.editing.Edit;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Wording;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/**
 * Changes the radius of the circle that a wording stands on and its place on it, by whole degrees; Shift keeps to one of
 * both, whichever was moved further. The ghost is right where the text has its place, and bends when it is let go.
 */
final class ArcTracker extends GripTracker {

	private static final double LEAST_RADIUS = 1;

	private final Wording wording;
	private final Transform toJob;

	ArcTracker(GraphicalViewer viewer, CanvasZoom zoom, ElementPart part) {
		super(viewer, zoom, List.of(part));
		wording = (Wording) part.element();
		toJob = PictureMaker.transform(wording.getTransform());
	}

	private record Arc(double radius, double degrees) {

		Point place() {
			double angle = Math.toRadians(degrees);
			return new Point(radius * Math.sin(angle), -radius * Math.cos(angle));
		}
	}

	private Arc now() {
		return new Arc(wording.getArcRadius(), wording.getArcAngle());
	}

	private Arc dragged() {
		Arc now = now();
		if (toJob.determinant() == 0) {
			return now;
		}
		Point start = toJob.apply(now.place());
		Point place = toJob.inverse().apply(new Point(start.x() + dx(), start.y() + dy()));
		double radius = Math.max(LEAST_RADIUS, Math.round(place.length() / step()) * step());
		double degrees = Math.rint(Math.toDegrees(Math.atan2(place.x(), -place.y())));
		if (isShiftHeld()) {
			double round = Math.toRadians(Math.abs(Math.IEEEremainder(degrees - now.degrees(), 360))) * now.radius();
			return Math.abs(radius - now.radius()) >= round ? new Arc(radius, now.degrees())
					: new Arc(now.radius(), degrees);
		}
		return new Arc(CanvasZoom.plain(radius), degrees);
	}

	@Override
	Edit edit() {
		Arc arc = dragged();
		return ChangeFlow.arc(wording, arc.radius(), arc.degrees());
	}

	@Override
	Transform map() {
		Arc from = now();
		Arc to = dragged();
		Point start = from.place();
		Point end = to.place();
		return toJob.determinant() == 0 ? Transform.IDENTITY
				: toJob.inverse().then(Transform.translation(-start.x(), -start.y()))
						.then(Transform.rotation(Math.toRadians(to.degrees() - from.degrees())))
						.then(Transform.translation(end.x(), end.y())).then(toJob);
	}

	@Override
	String measure() {
		Arc arc = dragged();
		return NLS.bind(Messages.ArcTracker_reading, LengthText.of(arc.radius()),
				NumberFormat.getIntegerInstance().format(arc.degrees()));
	}
}
