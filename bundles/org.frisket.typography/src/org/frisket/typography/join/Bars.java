package org.frisket.typography.join;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.geometry.shapes.ShapePath;
import org.frisket.typography.SetText;

/** Bars along lines of text and frames about it. */
public final class Bars {

	private Bars() {
	}

	/**
	 * A bar along each line that leaves a mark, as wide as its outlines.
	 *
	 * @param text      set straight
	 * @param top       of the bar below the baseline in mm: positive for an underline, negative for a bar that the
	 *                  letters stand in, so that it holds them together
	 * @param thickness in mm
	 * @param overhang  in mm, by which the bar juts out at both ends; may be negative
	 * @throws IllegalArgumentException unless the thickness is positive and all lengths finite
	 */
	public static Outline along(SetText text, double top, double thickness, double overhang) {
		if (!(thickness > 0) || !Double.isFinite(top + thickness + overhang)) {
			throw new IllegalArgumentException("a bar " + thickness + " mm thick at " + top + " mm");
		}
		List<Contour> bars = new ArrayList<>();
		for (int i = 0; i < text.lines().size(); i++) {
			int line = i;
			Bounds letters = text.letters().stream().filter(l -> l.line() == line).map(l -> l.outline().bounds())
					.reduce(Bounds.EMPTY, Bounds::with);
			double y = text.lines().get(i).baseline() + top;
			double left = letters.minX() - overhang;
			double right = letters.maxX() + overhang;
			if (left < right) {
				bars.add(rectangle(left, y, right, y + thickness));
			}
		}
		return new Outline(bars);
	}

	/**
	 * A frame about a box.
	 *
	 * @param margin    from the box to the inner edge in mm; negative to hold what it overlaps
	 * @param thickness in mm
	 * @param radius    of the outer corners in mm, as far as the frame has room for it; the inner ones run parallel
	 * @throws IllegalArgumentException unless the thickness is positive, the radius not negative and a box is left
	 */
	public static Outline frame(Bounds box, double margin, double thickness, double radius) {
		Bounds inner = box.grown(margin);
		if (!(thickness > 0) || !(radius >= 0) || !Double.isFinite(thickness + radius) || inner.isEmpty()
				|| !(inner.width() > 0 && inner.height() > 0)) {
			throw new IllegalArgumentException("a frame " + thickness + " mm thick at " + margin + " mm");
		}
		Bounds outer = inner.grown(thickness);
		double round = Math.min(radius, Math.min(outer.width(), outer.height()) / 2);
		double innerRound = Math.min(Math.max(0, round - thickness), Math.min(inner.width(), inner.height()) / 2);
		return Outline.of(rounded(outer, round), rounded(inner, innerRound).reversed());
	}

	private static Contour rounded(Bounds box, double radius) {
		try {
			return PathData.parse(ShapePath.roundedRectangle(box.width(), box.height(), radius))
					.transformed(Transform.translation(box.minX(), box.minY())).contours().get(0);
		} catch (PathDataException never) {
			throw new IllegalStateException(never);
		}
	}

	private static Contour rectangle(double left, double top, double right, double bottom) {
		return Contour.polygon(List.of(new Point(left, top), new Point(left, bottom), new Point(right, bottom),
				new Point(right, top)));
	}

	/** Lettering and bars as one region. */
	public static Region united(Region lettering, Outline bars, Tolerance tolerance, Monitor monitor) {
		Region added = new OutlineCleaner().clean(bars, FillRule.NON_ZERO, tolerance, monitor).region();
		return new RegionBoolean().union(List.of(lettering, added), tolerance, monitor);
	}
}
