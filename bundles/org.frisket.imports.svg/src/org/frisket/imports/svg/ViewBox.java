package org.frisket.imports.svg;

import java.util.List;

import org.frisket.geometry.Transform;

/** How a picture is fitted into a box: SVG 1.1, sections 7.7 and 7.8. */
record ViewBox(double x, double y, double width, double height) {

	/** Null if there is none, or one without extent. */
	static ViewBox of(Node node) {
		String text = node.attribute("viewBox");
		List<Double> values = text == null ? List.of() : Numbers.list(text);
		return values.size() < 4 || !(values.get(2) > 0) || !(values.get(3) > 0) ? null
				: new ViewBox(values.get(0), values.get(1), values.get(2), values.get(3));
	}

	/** Into a box with its corner at the origin. */
	Transform into(double boxWidth, double boxHeight, String preserve) {
		String[] words = preserve.strip().split("\\s+");
		int first = words[0].equals("defer") && words.length > 1 ? 1 : 0;
		String align = words[first];
		double sx = boxWidth / width;
		double sy = boxHeight / height;
		if (!align.equals("none")) {
			boolean slice = words.length > first + 1 && words[first + 1].equals("slice");
			sx = slice ? Math.max(sx, sy) : Math.min(sx, sy);
			sy = sx;
		}
		double dx = share(align, "xMin", "xMax", align.equals("none")) * (boxWidth - width * sx);
		double dy = share(align, "YMin", "YMax", align.equals("none")) * (boxHeight - height * sy);
		return new Transform(sx, 0, 0, sy, dx - x * sx, dy - y * sy);
	}

	private static double share(String align, String least, String most, boolean none) {
		if (none || align.contains(least)) {
			return 0;
		}
		return align.contains(most) ? 1 : 0.5;
	}
}
