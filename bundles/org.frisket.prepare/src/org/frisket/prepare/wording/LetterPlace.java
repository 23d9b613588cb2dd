package org.frisket.prepare.wording;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * Where a letter of a wording stands, in mm of the wording's own frame.
 *
 * @param start index of its first character (UTF-16)
 * @param end   index after its last one
 * @param box   of its outline as it was set, before it was nudged or bent
 * @param place leads from there to where it stands
 * @param lie   turn of its line where it stands, in radians, clockwise to the viewer
 */
public record LetterPlace(int start, int end, Bounds box, Transform place, double lie) {

	/** The corners of its box where it stands, once round. */
	public List<Point> corners() {
		return List.of(new Point(box.minX(), box.minY()), new Point(box.maxX(), box.minY()),
				new Point(box.maxX(), box.maxY()), new Point(box.minX(), box.maxY())).stream().map(place::apply).toList();
	}

	/** About which it is turned and scaled. */
	public Point middle() {
		return place.apply(box.centre());
	}

	/** A shift of the wording's frame as one along the letter's line and down from it. */
	public Point alongLine(Point shift) {
		return Transform.rotation(-lie).apply(shift);
	}
}
