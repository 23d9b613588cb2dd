package org.frisket.prepare.internal.cures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.frisket.editing.elements.ChangeOperation;
import org.frisket.editing.shapes.ChangePath;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Trial;

/** A contour that is open is closed by a straight line, or drawn where it encloses nothing. */
public final class OpenContourCures {

	private OpenContourCures() {
	}

	public static List<Cure> of(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>();
		OwnPath.of(finding, trial).flatMap(path -> closed(path, finding, trial)).ifPresent(cures::add);
		if (trial.prepared(finding).map(PreparedElement::region).filter(region -> region.isEmpty()).isPresent()) {
			cures.add(Cure.of(Messages.OpenContourCures_draw, finding.element(), Element.class,
					element -> ChangeOperation.kind(List.of(element), OperationKind.DRAW)));
		}
		return cures;
	}

	private static Optional<Cure> closed(OwnPath path, Finding finding, Trial trial) {
		double reach = trial.tolerance().mm();
		Transform toJob = path.transform();
		Optional<Contour> open = path.contours().stream().filter(contour -> !contour.isClosed() && !contour.isEmpty())
				.filter(contour -> distance(contour, toJob, finding.place()) <= reach)
				.min(Comparator.comparingDouble(contour -> distance(contour, toJob, finding.place())));
		return open.filter(contour -> enclosesSomething(contour.transformed(toJob), reach))
				.map(contour -> cure(path, contour, finding));
	}

	private static Cure cure(OwnPath path, Contour contour, Finding finding) {
		List<Contour> contours = new ArrayList<>(path.contours());
		contours.set(contours.indexOf(contour), close(contour));
		String data = OwnPath.data(new Outline(contours));
		return Cure.of(Messages.OpenContourCures_close, finding.element(), org.frisket.model.Outline.class,
				outline -> ChangePath.repaired(Messages.OpenContourCures_closed, outline, data));
	}

	private static double distance(Contour contour, Transform toJob, Point place) {
		return toJob.apply(contour.end()).distance(place);
	}

	/** A line that goes there and back the same way would be gone once it is closed. */
	private static boolean enclosesSomething(Contour contour, double tolerance) {
		return Math.abs(contour.signedArea()) > contour.length() * tolerance;
	}

	private static Contour close(Contour open) {
		List<Segment> segments = new ArrayList<>(open.segments());
		if (!open.end().equals(open.start())) {
			segments.add(new Line(open.end(), open.start()));
		}
		return Contour.closed(segments);
	}
}
