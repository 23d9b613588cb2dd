package org.frisket.prepare;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Matrix;
import org.frisket.model.Picture;
import org.frisket.model.Wording;

/**
 * What is shown of a wording whose font is missing: a crossed box for each line, about as large as the line would be;
 * and of a picture that cannot be read: a crossed box in its place. It is for looking at alone; the element's region
 * stays empty, so that nothing of it is ever worked.
 */
public final class Placeholder {

	/** Id of the finding of a wording whose font cannot be found. */
	public static final String FONT_MISSING = "font-missing";

	/** Id of the finding of a picture whose pixels cannot be read. */
	public static final String PICTURE_UNREADABLE = "picture-unreadable";

	/** Id of the finding of a picture whose file is not where it is to be. */
	public static final String PICTURE_MISSING = "picture-missing";

	/** Id of the finding of a picture that is read from a file of its own. */
	public static final String PICTURE_LINKED = "picture-linked";

	/** Width of a letter against the height of capitals, as in common text faces. */
	private static final double LETTER_WIDTH = 0.75;

	private Placeholder() {
	}

	/** The boxes in the job's frame; empty unless the element is such a wording or picture. */
	public static Outline of(PreparedElement prepared) {
		if (prepared.element() instanceof Picture picture && isUnread(prepared)) {
			List<Contour> box = new ArrayList<>();
			cross(0, picture.getHeight(), picture.getWidth(), picture.getHeight(), box);
			return new Outline(box).transformed(transform(picture.getTransform()));
		}
		if (!(prepared.element() instanceof Wording wording) || wording.getText() == null
				|| !has(prepared, FONT_MISSING)) {
			return Outline.EMPTY;
		}
		List<Contour> contours = new ArrayList<>();
		List<String> lines = wording.getText().lines().toList();
		double widest = lines.stream().mapToDouble(line -> width(line, wording)).max().orElse(0);
		for (int i = 0; i < lines.size(); i++) {
			double width = width(lines.get(i), wording);
			if (width > 0) {
				cross(start(wording, widest, width), i * wording.getLineSpacing() * wording.getHeight(), width,
						wording.getHeight(), contours);
			}
		}
		return new Outline(contours).transformed(transform(wording.getTransform()));
	}

	/** Whether it is a picture without any pixels to show. */
	static boolean isUnread(PreparedElement prepared) {
		return has(prepared, PICTURE_UNREADABLE) || has(prepared, PICTURE_MISSING);
	}

	private static boolean has(PreparedElement prepared, String finding) {
		return prepared.findings().stream().anyMatch(found -> found.id().equals(finding));
	}

	private static double width(String line, Wording wording) {
		int letters = line.codePointCount(0, line.length());
		return letters * (LETTER_WIDTH * wording.getHeight() + wording.getTracking());
	}

	private static double start(Wording wording, double widest, double width) {
		return switch (wording.getAlignment()) {
		case LEFT, JUSTIFY -> 0;
		case CENTRE -> (widest - width) / 2;
		case RIGHT -> widest - width;
		};
	}

	/** A box that stands on its baseline, with its diagonals. */
	private static void cross(double left, double baseline, double width, double height, List<Contour> into) {
		Point topLeft = new Point(left, baseline - height);
		Point topRight = new Point(left + width, baseline - height);
		Point bottomRight = new Point(left + width, baseline);
		Point bottomLeft = new Point(left, baseline);
		into.add(Contour.polygon(List.of(topLeft, bottomLeft, bottomRight, topRight)));
		into.add(Contour.open(List.of(new Line(topLeft, bottomRight))));
		into.add(Contour.open(List.of(new Line(bottomLeft, topRight))));
	}

	private static Transform transform(Matrix m) {
		return m == null ? Transform.IDENTITY : new Transform(m.a(), m.b(), m.c(), m.d(), m.e(), m.f());
	}
}
