package org.frisket.ui.bench.internal.figures;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.ui.bench.internal.picture.ElementPicture;

/** Where a picture differs from the one before it: of a long text only the line that is typed. */
final class PictureChange {

	private PictureChange() {
	}

	/** The box of all contours that are in one of them only; nothing if the pictures differ in more than contours. */
	static Optional<Bounds> between(ElementPicture before, ElementPicture after) {
		if (before.placeholder() || after.placeholder() || !before.hatching().isEmpty() || !after.hatching().isEmpty()
				|| before.curves().isEmpty() || !before.operations().equals(after.operations())
				|| before.isPiece() != after.isPiece() || !before.placement().equals(after.placement())) {
			return Optional.empty();
		}
		List<Contour> old = before.curves().contours();
		List<Contour> anew = after.curves().contours();
		return Optional.of(box(old, anew).with(box(anew, old)));
	}

	private static Bounds box(List<Contour> contours, List<Contour> others) {
		Set<Contour> known = new HashSet<>(others);
		return contours.stream().filter(contour -> !known.contains(contour)).map(Contour::bounds).reduce(Bounds.EMPTY,
				Bounds::with);
	}
}
