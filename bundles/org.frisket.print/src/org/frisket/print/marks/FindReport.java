package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.print.picture.Grey;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.Projection;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.RegisterFinding.Severity;

/** What is said of marks that were looked for. */
final class FindReport {

	private final MarkPlan plan;
	private final List<RegisterFinding> findings = new ArrayList<>();

	private FindReport(MarkPlan plan) {
		this.plan = plan;
	}

	static FoundMarks none(MarkPlan plan) {
		FindReport report = new FindReport(plan);
		report.say("marks-none", Severity.BLOCKING, report.centre(), Messages.FindReport_none, Messages.FindReport_noneCure);
		return new FoundMarks(plan, Collections.nCopies(plan.marks().size(), Optional.empty()), Optional.empty(), false,
				report.findings);
	}

	/** @param map null if it is not known */
	static FoundMarks of(MarkPlan plan, Grey picture, Projection map, List<Optional<Point>> places) {
		long count = places.stream().filter(Optional::isPresent).count();
		if (map == null || count < 2) {
			return none(plan);
		}
		FindReport report = new FindReport(plan);
		Transform linear = map.linear(report.centre());
		boolean mirrored = linear.determinant() < 0;
		if (mirrored) {
			report.say("sheet-mirrored", Severity.BLOCKING, report.centre(), Messages.FindReport_mirrored,
					Messages.FindReport_mirroredCure);
		} else {
			report.turn(linear);
		}
		report.missing(picture, map, places);
		report.count(count);
		report.findings.sort(Comparator.comparing(RegisterFinding::severity));
		return new FoundMarks(plan, places, Optional.of(map), mirrored, report.findings);
	}

	private Point centre() {
		return new Point(plan.width() / 2, plan.height() / 2);
	}

	private void turn(Transform linear) {
		long degrees = Math.round(Math.toDegrees(Math.atan2(linear.b(), linear.a())));
		if (Math.abs(degrees) >= 135) {
			say("sheet-upside-down", Severity.NOTE, centre(), NLS.bind(Messages.FindReport_upsideDown, degrees),
					Messages.FindReport_turnedCure);
		} else if (Math.abs(degrees) > 45) {
			say("sheet-turned", Severity.NOTE, centre(), NLS.bind(Messages.FindReport_turned, degrees),
					Messages.FindReport_turnedCure);
		}
	}

	private void missing(Grey picture, Projection map, List<Optional<Point>> places) {
		for (int i = 0; i < places.size(); i++) {
			if (places.get(i).isEmpty()) {
				Point place = plan.marks().get(i).place();
				Point expected = map.apply(place);
				if (picture.contains(expected.x(), expected.y())) {
					say("mark-missing", Severity.CAUTION, place, NLS.bind(Messages.FindReport_missing, i + 1),
							Messages.FindReport_missingCure);
				} else {
					say("mark-outside", Severity.CAUTION, place, NLS.bind(Messages.FindReport_outside, i + 1),
							Messages.FindReport_outsideCure);
				}
			}
		}
	}

	private void count(long count) {
		if (count < MarkPlan.LEAST_MARKS) {
			say("marks-few", Severity.BLOCKING, centre(), NLS.bind(Messages.FindReport_few, count, MarkPlan.LEAST_MARKS),
					Messages.FindReport_noneCure);
		} else if (count < FitKind.PROJECTIVE.leastMarks()) {
			say("tilt-unknown", Severity.CAUTION, centre(), NLS.bind(Messages.FindReport_tilt, count),
					Messages.FindReport_tiltCure);
		}
	}

	private void say(String id, Severity severity, Point place, String message, String cure) {
		findings.add(RegisterFinding.plain(id, severity, place, message, cure));
	}
}
