package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Point;
import org.frisket.print.picture.Resolution;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.Projection;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.Registration;

/**
 * The marks of a plan in a picture.
 *
 * @param plan     that was looked for
 * @param places   of its marks in pixels of the picture, empty for a mark that was not found
 * @param map      from mm on the sheet to pixels; empty if too few marks were found to say anything
 * @param mirrored whether the picture shows the sheet mirrored
 * @param findings what is to be known before anything is cut by it
 */
public record FoundMarks(MarkPlan plan, List<Optional<Point>> places, Optional<Projection> map, boolean mirrored,
		List<RegisterFinding> findings) {

	public FoundMarks {
		places = List.copyOf(places);
		findings = List.copyOf(findings);
	}

	/** How many were found. */
	public int count() {
		return (int) places.stream().filter(Optional::isPresent).count();
	}

	public boolean isBlocked() {
		return findings.stream().anyMatch(RegisterFinding::isBlocking);
	}

	/** Where the marks are in mm from the top left corner of the picture, in the order of the plan. */
	public List<Optional<Point>> places(Resolution resolution) {
		return places.stream().map(place -> place
				.map(pixel -> new Point(pixel.x() * resolution.pixelWidth(), pixel.y() * resolution.pixelHeight()))).toList();
	}

	/**
	 * How the sheet lies in the picture, in mm from its top left corner.
	 *
	 * @param resolution of the picture
	 * @throws RegisterException if too few marks were found for this fit
	 */
	public Registration registration(FitKind kind, Resolution resolution) throws RegisterException {
		List<Point> designed = new ArrayList<>();
		List<Point> measured = new ArrayList<>();
		List<Integer> numbers = new ArrayList<>();
		List<Optional<Point>> seen = places(resolution);
		for (int i = 0; i < seen.size(); i++) {
			if (seen.get(i).isPresent()) {
				designed.add(plan.marks().get(i).place());
				measured.add(seen.get(i).get());
				numbers.add(i + 1);
			}
		}
		return Registration.fit(kind, designed, measured, numbers);
	}
}
