package org.frisket.imports.svg;

import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/** Lists of transforms: SVG 1.1, section 7.6; angles with a unit and lengths in px as CSS writes them. */
final class Transforms {

	private Transforms() {
	}

	/** What cannot be read ends the list. */
	static Transform parse(String text) {
		Transform all = Transform.IDENTITY;
		int at = Numbers.afterSeparator(text, 0);
		while (at < text.length()) {
			int open = text.indexOf('(', at);
			int end = open < 0 ? -1 : text.indexOf(')', open);
			Transform one = end < 0 ? null
					: one(text.substring(at, open).stripTrailing(), Numbers.list(bare(text.substring(open + 1, end))));
			if (one == null) {
				break;
			}
			// the last one in the list works first
			all = one.then(all);
			at = Numbers.afterSeparator(text, end + 1);
		}
		return all;
	}

	private static String bare(String numbers) {
		return numbers.replace("deg", " ").replace("px", " ");
	}

	private static Transform one(String name, List<Double> v) {
		int count = v.size();
		return switch (name) {
		case "matrix" -> count < 6 ? null : new Transform(v.get(0), v.get(1), v.get(2), v.get(3), v.get(4), v.get(5));
		case "translate" -> count < 1 ? null : Transform.translation(v.get(0), count > 1 ? v.get(1) : 0);
		case "scale" -> count < 1 ? null : Transform.scaling(v.get(0), count > 1 ? v.get(1) : v.get(0));
		case "rotate" -> count < 1 ? null : rotation(v);
		case "skewX" -> count < 1 ? null : new Transform(1, 0, Math.tan(Math.toRadians(v.get(0))), 1, 0, 0);
		case "skewY" -> count < 1 ? null : new Transform(1, Math.tan(Math.toRadians(v.get(0))), 0, 1, 0, 0);
		default -> null;
		};
	}

	private static Transform rotation(List<Double> v) {
		Transform turn = Transform.rotation(Math.toRadians(v.get(0)));
		if (v.size() < 3) {
			return turn;
		}
		Point centre = new Point(v.get(1), v.get(2));
		return Transform.translation(-centre.x(), -centre.y()).then(turn)
				.then(Transform.translation(centre.x(), centre.y()));
	}
}
