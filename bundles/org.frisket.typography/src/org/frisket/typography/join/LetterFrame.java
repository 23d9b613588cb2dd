package org.frisket.typography.join;

import java.util.List;
import java.util.stream.Stream;

import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;

/**
 * A letter's own frame: from its pen, along its baseline and downwards, in cap heights of its text. What is measured in
 * it stays with the letter when that is moved, turned, bent or set in another size.
 */
public final class LetterFrame {

	private LetterFrame() {
	}

	/**
	 * From the letter's own frame to where it came to lie.
	 *
	 * @param set    as it was set straight
	 * @param placed as it stands in the end
	 */
	public static Transform of(SetText text, Letter set, Letter placed) {
		double unit = text.capHeight();
		Transform own = Transform.scaling(unit, unit).then(Transform.translation(set.origin().x(), set.origin().y()));
		List<Point> from = nodes(set);
		List<Point> to = nodes(placed);
		Point start = from.get(0);
		int far = 0;
		for (int i = 1; i < from.size(); i++) {
			far = from.get(i).distance(start) > from.get(far).distance(start) ? i : far;
		}
		Point before = from.get(far).minus(start);
		Point after = to.get(far).minus(to.get(0));
		double square = before.dot(before);
		if (!(square > 0)) {
			return own;
		}
		// letters are turned and scaled as a whole, so that two places tell of all
		double a = before.dot(after) / square;
		double b = before.cross(after) / square;
		Transform turn = new Transform(a, b, -b, a, 0, 0);
		return own.then(Transform.translation(-start.x(), -start.y())).then(turn)
				.then(Transform.translation(to.get(0).x(), to.get(0).y()));
	}

	private static List<Point> nodes(Letter letter) {
		return letter.outline().contours().stream().flatMap(contour -> contour.segments().stream())
				.flatMap(segment -> Stream.of(segment.start(), segment.end())).toList();
	}
}
