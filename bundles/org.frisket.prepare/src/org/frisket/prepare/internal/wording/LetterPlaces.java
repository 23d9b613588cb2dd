package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.typography.Letter;

/** Where the letters of a wording stand, and what brought them there. */
public final class LetterPlaces {

	private LetterPlaces() {
	}

	/** In the order of the text. */
	public static List<LetterPlace> of(WordingText text) {
		List<LetterPlace> places = new ArrayList<>();
		for (int i = 0; i < text.set().letters().size(); i++) {
			Letter set = text.set().letters().get(i);
			Letter placed = text.placed().letters().get(i);
			Transform bent = between(text.straight().letters().get(i), placed);
			places.add(new LetterPlace(set.start(), set.end(), set.outline().bounds(), between(set, placed),
					Math.atan2(bent.b(), bent.a())));
		}
		places.sort(Comparator.comparingInt(LetterPlace::start));
		return List.copyOf(places);
	}

	/** Letters are moved, turned and scaled, never mirrored or sheared: two points tell how. */
	private static Transform between(Letter from, Letter to) {
		List<Point> before = points(from.outline());
		List<Point> after = points(to.outline());
		int far = 0;
		for (int i = 1; i < before.size(); i++) {
			if (before.get(i).distance(before.get(0)) > before.get(far).distance(before.get(0))) {
				far = i;
			}
		}
		Point was = before.get(far).minus(before.get(0));
		Point is = after.get(far).minus(after.get(0));
		double square = was.x() * was.x() + was.y() * was.y();
		double a = square == 0 ? 1 : (was.x() * is.x() + was.y() * is.y()) / square;
		double b = square == 0 ? 0 : (was.x() * is.y() - was.y() * is.x()) / square;
		Point start = before.get(0);
		return new Transform(a, b, -b, a, after.get(0).x() - a * start.x() + b * start.y(),
				after.get(0).y() - b * start.x() - a * start.y());
	}

	private static List<Point> points(Outline outline) {
		List<Point> points = new ArrayList<>();
		for (Contour contour : outline.contours()) {
			for (Segment segment : contour.segments()) {
				points.add(segment.end());
			}
		}
		return points;
	}
}
