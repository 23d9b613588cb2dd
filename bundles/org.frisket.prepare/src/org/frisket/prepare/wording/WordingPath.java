package org.frisket.prepare.wording;

import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.PathData;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Flow;
import org.frisket.model.Matrix;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.geometry.lines.ArcLength;

/** The path that a wording runs along, by the length along it: from where its text comes, in mm, in its own frame. */
public final class WordingPath {

	private final ArcLength along;

	private WordingPath(ArcLength along) {
		this.along = along;
	}

	/** Empty unless the wording runs along a path that has a length. */
	public static Optional<WordingPath> of(Wording wording) {
		if (wording.getFlow() != Flow.PATH) {
			return Optional.empty();
		}
		return contour(wording).map(path -> wording.isPathReversed() ? path.reversed() : path).map(ArcLength::new)
				.map(WordingPath::new);
	}

	/** The place at a length from the start; beyond the ends of an open path on its straight continuation. */
	public Point at(double start) {
		return along.at(start).point();
	}

	/** The length from the start to the place of the path that is nearest to a point. */
	public double nearest(Point point) {
		return along.nearest(point);
	}

	/** The first contour that has a length, as it was drawn: cleaning would turn it round. */
	public static Optional<Contour> contour(Wording wording) {
		return Optional.ofNullable(wording.getPath()).flatMap(WordingPath::contour);
	}

	private static Optional<Contour> contour(Outline outline) {
		try {
			String data = outline.getPathData();
			Matrix m = outline.getTransform();
			Transform placed = m == null ? Transform.IDENTITY : new Transform(m.a(), m.b(), m.c(), m.d(), m.e(), m.f());
			return PathData.parse(data == null ? "" : data).transformed(placed).contours().stream()
					.filter(contour -> !contour.isEmpty() && contour.length() > 0).findFirst();
		} catch (PathDataException e) {
			return Optional.empty();
		}
	}
}
