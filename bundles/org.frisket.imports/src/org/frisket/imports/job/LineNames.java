package org.frisket.imports.job;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.imports.ImportedShape;

/** After which line of the file a repaired line is named: the first one that runs through its middle. */
final class LineNames {

	/** What few lines are called each by its own name; more are taken together, or a bench could not hold them. */
	private static final int MOST = 200;

	private final List<ImportedShape.Lines> sources;
	private final List<List<Point>> chords;
	private final String together;
	private final Tolerance tolerance;

	/** @param together the name for all if there are too many */
	LineNames(List<ImportedShape.Lines> sources, String together, Tolerance tolerance) {
		this.sources = sources.size() > MOST ? List.of() : sources;
		this.together = together;
		this.tolerance = tolerance;
		chords = this.sources.stream().map(source -> source.outline().contours().stream()
				.flatMap(contour -> contour.flattened(tolerance.mm()).stream()).toList()).toList();
	}

	String of(Contour line) {
		List<Point> points = line.flattened(tolerance.mm());
		int at = points.size() / 2;
		Point middle = points.get(Math.max(0, at - 1)).towards(points.get(at), 0.5);
		int nearest = -1;
		double distance = Double.POSITIVE_INFINITY;
		for (int i = 0; i < sources.size(); i++) {
			Bounds box = sources.get(i).outline().bounds().grown(4 * tolerance.mm());
			double apart = box.contains(middle) ? distance(middle, chords.get(i)) : Double.POSITIVE_INFINITY;
			if (apart < distance - tolerance.mm()) {
				nearest = i;
				distance = apart;
			}
		}
		return nearest < 0 ? together : sources.get(nearest).name();
	}

	private static double distance(Point place, List<Point> chords) {
		double least = Double.POSITIVE_INFINITY;
		for (int i = 1; i < chords.size(); i++) {
			Point from = chords.get(i - 1);
			Point along = chords.get(i).minus(from);
			double length = along.dot(along);
			double t = length == 0 ? 0 : Math.min(1, Math.max(0, place.minus(from).dot(along) / length));
			least = Math.min(least, place.distance(from.plus(along.times(t))));
		}
		return least;
	}
}
