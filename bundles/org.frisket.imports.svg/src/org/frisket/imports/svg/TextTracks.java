package org.frisket.imports.svg;

import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.imports.UnreadableArtException;

/** Finds the paths that {@code textPath} elements name, or bring with them. */
final class TextTracks {

	private final Addresses addresses;
	private final ShapeOutlines shapes;
	private final Budget budget;

	TextTracks(Addresses addresses, ShapeOutlines shapes, Budget budget) {
		this.addresses = addresses;
		this.shapes = shapes;
		this.budget = budget;
	}

	/**
	 * Null if there is none to run along; then its text is not drawn.
	 *
	 * @param deviation how far cubics may lie from arcs, in pixels
	 */
	TextTrack of(Node textPath, Lengths lengths, double deviation) throws UnreadableArtException {
		Outline path;
		String own = textPath.attribute("path");
		String pathLength = null;
		if (own != null) {
			budget.pathData(textPath, own);
			path = shapes.path(textPath, own, deviation);
		} else {
			Node target = addresses.target(textPath, textPath.attribute("href", ""));
			if (target == null) {
				return null;
			}
			budget.pathData(target, target.attribute("d"));
			path = shapes.of(target, lengths, deviation);
			if (path == null) {
				addresses.noPath(textPath);
				return null;
			}
			Transform transform = Transforms.parse(target.attribute("transform", ""));
			path = path.transformed(transform);
			pathLength = target.attribute("pathLength");
		}
		TextTrack track = TextTrack.along(path, textPath.attribute("side", "left").strip().equals("right"));
		return track == null ? null : track.from(offset(textPath, track.length(), pathLength, lengths));
	}

	/** Percentages are of the path; lengths too, if its author says how long it is: SVG 1.1, section 10.13.2. */
	private static double offset(Node textPath, double length, String pathLength, Lengths lengths) {
		double authors = pathLength == null ? Double.NaN : lengths.parse(pathLength, Lengths.Of.WIDTH);
		double said = authors > 0 ? authors : length;
		double offset = new Lengths(lengths.perInch(), said, said, lengths.fontSize())
				.parse(textPath.attribute("startOffset", "0"), Lengths.Of.WIDTH);
		return Double.isFinite(offset) ? offset * length / said : 0;
	}
}
