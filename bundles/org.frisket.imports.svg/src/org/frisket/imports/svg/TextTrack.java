package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.geometry.lines.ArcLength;
import org.frisket.typography.Letter;

/**
 * A path that text runs along: SVG 1.1, section 10.13, and SVG 2, section 11.8. Its parts are run along one after the
 * other, without their gaps. All is in the pixels of the text.
 */
final class TextTrack {

	private final List<ArcLength> parts;
	private final double length;
	/** Where the text is set from. */
	private final double offset;

	/** @param parts at least one, in the direction of the text */
	private TextTrack(List<ArcLength> parts, double length, double offset) {
		this.parts = parts;
		this.length = length;
		this.offset = offset;
	}

	/**
	 * Null if the path has no length.
	 *
	 * @param against whether the text runs against it
	 */
	static TextTrack along(Outline path, boolean against) {
		List<Contour> contours = path.contours().stream().filter(contour -> contour.length() > 0).toList();
		List<ArcLength> parts = new ArrayList<>();
		for (Contour contour : contours) {
			if (against) {
				parts.add(0, new ArcLength(contour.reversed()));
			} else {
				parts.add(new ArcLength(contour));
			}
		}
		double length = parts.stream().mapToDouble(ArcLength::length).sum();
		return parts.isEmpty() ? null : new TextTrack(List.copyOf(parts), length, 0);
	}

	/** In pixels. */
	double length() {
		return length;
	}

	/** The same with the text set from another place, in pixels along it. */
	TextTrack from(double newOffset) {
		return new TextTrack(parts, length, newOffset);
	}

	/**
	 * A letter that stands on a straight line as it stands on the path: its middle on the path, turned with it. Null if
	 * its middle lies beyond the ends; on a closed path, which has none, if it lies further than once round.
	 *
	 * @param letter its origin is as far along, and below, as it is to be
	 * @param anchor the value of {@code text-anchor}
	 */
	Outline placed(Letter letter, String anchor) {
		double straight = letter.origin().x() + letter.advance() / 2;
		double middle = straight + offset;
		if (isClosed()) {
			// SVG 2, section 11.8.3: once round from where the text is anchored
			double least = switch (anchor) {
			case "middle" -> -length / 2;
			case "end" -> -length;
			default -> 0;
			};
			if (straight < least || straight > least + length) {
				return null;
			}
			middle -= length * Math.floor(middle / length);
		} else if (middle < 0 || middle > length) {
			return null;
		}
		ArcLength.Place place = at(middle);
		double turn = Math.atan2(place.direction().y(), place.direction().x());
		return letter.outline().transformed(Transform.translation(-straight, 0).then(Transform.rotation(turn))
				.then(Transform.translation(place.point().x(), place.point().y())));
	}

	/** What follows text on a path begins there: SVG 2, section 11.8.3. */
	Point end() {
		return at(length).point();
	}

	/** Whether it comes back to where it begins. */
	private boolean isClosed() {
		return parts.size() == 1 && parts.get(0).isClosed();
	}

	private ArcLength.Place at(double along) {
		double rest = along;
		for (ArcLength part : parts.subList(0, parts.size() - 1)) {
			if (rest < part.length()) {
				return part.at(rest);
			}
			rest -= part.length();
		}
		ArcLength last = parts.get(parts.size() - 1);
		return last.at(Math.min(rest, last.length()));
	}
}
