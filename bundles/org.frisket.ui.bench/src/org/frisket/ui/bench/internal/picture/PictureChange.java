package org.frisket.ui.bench.internal.picture;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Segment;

/** Where a picture differs from the one before it: of a long text, and of the mats behind it, only the end that is typed. */
public final class PictureChange {

	private PictureChange() {
	}

	/**
	 * The box, in the frame of the pictures, of all segments that are in one of them only; nothing if the pictures
	 * differ in more than contours. What is filled differs only in there, as it is bounded by such segments.
	 *
	 * @param dashed whether a line is painted whose pattern goes on from segment to segment: contours then count as a
	 *               whole
	 */
	public static Optional<Bounds> between(ElementPicture before, ElementPicture after, boolean dashed) {
		if (before.placeholder() || after.placeholder() || !before.hatching().isEmpty() || !after.hatching().isEmpty()
				|| before.curves().isEmpty() || !before.operations().equals(after.operations())
				|| before.part() != after.part() || before.pixels() != null || after.pixels() != null
				|| !before.dashes().isEmpty() || !after.dashes().isEmpty()
				|| !before.placement().equals(after.placement())) {
			return Optional.empty();
		}
		List<Contour> gone = without(before.curves().contours(), after.curves().contours());
		List<Contour> come = without(after.curves().contours(), before.curves().contours());
		return Optional.of(dashed ? box(gone).with(box(come)) : boxOfUnlikeSegments(gone, come));
	}

	private static List<Contour> without(List<Contour> contours, List<Contour> others) {
		Set<Contour> known = new HashSet<>(others);
		return contours.stream().filter(contour -> !known.contains(contour)).toList();
	}

	private static Bounds box(List<Contour> contours) {
		return contours.stream().map(Contour::bounds).reduce(Bounds.EMPTY, Bounds::with);
	}

	private static Bounds boxOfUnlikeSegments(List<Contour> gone, List<Contour> come) {
		Map<Segment, Integer> surplus = new HashMap<>();
		count(gone, -1, surplus);
		count(come, 1, surplus);
		Bounds box = Bounds.EMPTY;
		for (Map.Entry<Segment, Integer> each : surplus.entrySet()) {
			if (each.getValue() != 0) {
				box = box.with(each.getKey().bounds());
			}
		}
		return box;
	}

	private static void count(List<Contour> contours, int by, Map<Segment, Integer> surplus) {
		for (Contour contour : contours) {
			for (Segment segment : contour.segments()) {
				surplus.merge(segment, by, Integer::sum);
			}
			if (!contour.isClosed() && !contour.isEmpty()) {
				// filled as if closed, though no segment says so
				surplus.merge(new Line(contour.end(), contour.start()), by, Integer::sum);
			}
		}
	}
}
