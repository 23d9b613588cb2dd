package org.frisket.typography;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * One letter moved by hand. It is turned and scaled about the middle of its outline's box, then moved.
 *
 * @param index of a character (UTF-16) of the letter
 * @param dx    to the right along its line in mm
 * @param dy    down in mm
 * @param turn  in degrees, clockwise to the viewer
 * @param scale 1 for its own size
 */
public record Nudge(int index, double dx, double dy, double turn, double scale) {

	/** @throws IllegalArgumentException unless all values are finite and the scale is positive */
	public Nudge {
		if (index < 0 || !Double.isFinite(dx) || !Double.isFinite(dy) || !Double.isFinite(turn)
				|| !(scale > 0 && Double.isFinite(scale))) {
			throw new IllegalArgumentException(
					"a nudge of character " + index + " by " + dx + ", " + dy + ", " + turn + "°, × " + scale);
		}
	}

	public static Nudge by(int index, double dx, double dy) {
		return new Nudge(index, dx, dy, 0, 1);
	}

	/** Whether it changes nothing. */
	public boolean isNone() {
		return dx == 0 && dy == 0 && turn % 360 == 0 && scale == 1;
	}

	/**
	 * The text with its letters moved. Nudges of several characters that became one letter add up; those of
	 * characters that left no mark have no effect. Best after joining, which would take back what it can, and before
	 * the text is bent.
	 */
	public static SetText apply(SetText text, List<Nudge> nudges) {
		if (nudges.isEmpty()) {
			return text;
		}
		List<Letter> moved = new ArrayList<>();
		for (Letter letter : text.letters()) {
			Letter at = letter;
			for (Nudge nudge : nudges) {
				if (nudge.index >= letter.start() && nudge.index < letter.end()) {
					at = nudge.applied(at);
				}
			}
			moved.add(at);
		}
		return text.withLetters(moved);
	}

	private Letter applied(Letter letter) {
		Point middle = letter.outline().bounds().centre();
		return letter.transformed(Transform.translation(-middle.x(), -middle.y()).then(Transform.scaling(scale, scale))
				.then(Transform.rotation(Math.toRadians(turn)))
				.then(Transform.translation(middle.x() + dx, middle.y() + dy)));
	}
}
