package org.frisket.ui.bench.internal.letters;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.TextChange.Part;
import org.frisket.prepare.wording.LetterPlace;

/**
 * The letters of a wording as they lie on the bench, with what can be taken hold of. Places are mm of the job.
 *
 * @param letters in the wording's own frame
 * @param toJob   leads out of it; not flat
 * @param scale   pixels to a mm
 */
record LetterFrames(List<LetterPlace> letters, LetterChoice choice, Transform toJob, double scale) {

	private static final double GRIP_REACH_PX = 8;
	private static final double LETTER_REACH_PX = 3;
	private static final double SCALE_GRIP_PX = 9;
	private static final double TURN_GRIP_PX = 24;

	/** The corners of a letter's frame, once round from its upper left. */
	List<Point> corners(LetterPlace letter) {
		return letter.corners().stream().map(toJob::apply).toList();
	}

	Bounds box(LetterPlace letter) {
		return corners(letter).stream().map(Bounds::of).reduce(Bounds.EMPTY, Bounds::with);
	}

	Point middle(LetterPlace letter) {
		return toJob.apply(letter.middle());
	}

	/** Beyond the lower right corner of the leading letter. */
	Optional<Point> scaleGrip() {
		return choice.lead(letters).map(letter -> beyond(middle(letter), corners(letter).get(2), SCALE_GRIP_PX));
	}

	/** Above the leading letter. */
	Optional<Point> turnGrip() {
		return choice.lead(letters).map(letter -> {
			List<Point> corners = corners(letter);
			Point top = new Point((corners.get(0).x() + corners.get(1).x()) / 2,
					(corners.get(0).y() + corners.get(1).y()) / 2);
			return beyond(middle(letter), top, TURN_GRIP_PX);
		});
	}

	private Point beyond(Point middle, Point place, double px) {
		Point away = place.minus(middle);
		double length = Math.hypot(away.x(), away.y());
		return length == 0 ? new Point(place.x(), place.y() - px / scale)
				: new Point(place.x() + away.x() / length * px / scale, place.y() + away.y() / length * px / scale);
	}

	boolean isOnScaleGrip(Point place) {
		return scaleGrip().filter(grip -> grip.distance(place) <= GRIP_REACH_PX / scale).isPresent();
	}

	boolean isOnTurnGrip(Point place) {
		return turnGrip().filter(grip -> grip.distance(place) <= GRIP_REACH_PX / scale).isPresent();
	}

	/** The letter under a place: of several frames there that with the nearest middle. */
	Optional<LetterPlace> at(Point place) {
		return near(place, LETTER_REACH_PX).stream()
				.min((a, b) -> Double.compare(middle(a).distance(place), middle(b).distance(place)));
	}

	/** The letters whose frames come so near to a place. */
	List<LetterPlace> near(Point place, double px) {
		return letters.stream().filter(letter -> {
			Transform own = letter.place().then(toJob);
			if (own.determinant() == 0) {
				return false;
			}
			Point in = own.inverse().apply(place);
			Bounds box = letter.box();
			Point nearest = new Point(Math.max(box.minX(), Math.min(box.maxX(), in.x())),
					Math.max(box.minY(), Math.min(box.maxY(), in.y())));
			return own.apply(nearest).distance(place) <= px / scale;
		}).toList();
	}

	static Part part(LetterPlace letter) {
		return new Part(letter.start(), letter.end());
	}

	List<Part> chosenParts() {
		return choice.of(letters).stream().map(LetterFrames::part).toList();
	}
}
