package org.frisket.ui.bench.internal.grips;

import java.text.NumberFormat;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.Edit;
import org.frisket.editing.wording.ChangeFlow;
import org.frisket.geometry.Point;
import org.frisket.model.Wording;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.nodes.LivePicture;
import org.frisket.ui.bench.internal.parts.ElementPart;

/**
 * Changes the radius of the circle that a wording stands on and its place on it, by whole degrees; Shift keeps to one of
 * both, whichever was moved further.
 */
final class ArcTracker extends LiveTracker {

	private static final double LEAST_RADIUS = 1;

	ArcTracker(GraphicalViewer viewer, CanvasZoom zoom, ElementPart part, LivePicture live) {
		super(viewer, zoom, part, live);
	}

	private record Arc(double radius, double degrees) {
	}

	private Arc dragged() {
		Arc now = new Arc(wording.getArcRadius(), wording.getArcAngle());
		Point place = dragged(FlowGrip.onArc(wording));
		double radius = Math.max(LEAST_RADIUS, zoom.rounded(place.length()));
		double degrees = Math.rint(Math.toDegrees(Math.atan2(place.x(), -place.y())));
		if (isShiftHeld()) {
			double round = Math.toRadians(Math.abs(Math.IEEEremainder(degrees - now.degrees(), 360))) * now.radius();
			return Math.abs(radius - now.radius()) >= round ? new Arc(radius, now.degrees())
					: new Arc(now.radius(), degrees);
		}
		return new Arc(radius, degrees);
	}

	@Override
	Edit edit(Wording target) {
		Arc arc = dragged();
		return ChangeFlow.arc(target, arc.radius(), arc.degrees());
	}

	@Override
	String measure() {
		Arc arc = dragged();
		return NLS.bind(Messages.ArcTracker_reading, LengthText.of(arc.radius()),
				NumberFormat.getIntegerInstance().format(arc.degrees()));
	}
}
