package org.frisket.geometry.repair;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.clean.FillRule;

/**
 * What repair steps work on: areas, and lines that bound none. Lines may be open or closed; they become part of an area
 * only by a step that says so.
 */
public record Artwork(List<Area> areas, List<Contour> lines) {

	/** Contours and the rule that tells their inside. */
	public record Area(Outline outline, FillRule rule) {

		public static Area of(Region region) {
			return new Area(region.toOutline(), FillRule.NON_ZERO);
		}
	}

	public Artwork {
		areas = List.copyOf(areas);
		lines = List.copyOf(lines);
	}

	public Artwork withAreas(List<Area> other) {
		return new Artwork(other, lines);
	}

	public Artwork withLines(List<Contour> other) {
		return new Artwork(areas, other);
	}

	/** The contours of all areas, then the lines. */
	public Outline toOutline() {
		return areas.stream().map(Area::outline).reduce(Outline.EMPTY, Outline::plus).plus(new Outline(lines));
	}

	/** The lines that do not close. */
	public List<Contour> openLines() {
		return lines.stream().filter(line -> !line.isClosed() && !line.isEmpty()).toList();
	}
}
