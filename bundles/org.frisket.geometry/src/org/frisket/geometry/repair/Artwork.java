package org.frisket.geometry.repair;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.clean.FillRule;

/**
 * What repair steps work on: areas, and lines that bound none. Lines may be open or closed; they become part of an area
 * only by a step that says so.
 */
public record Artwork(List<Area> areas, List<Contour> lines) {

	/** Contours and the rule that tells their inside. */
	public record Area(Outline outline, FillRule rule) {
	}

	public Artwork {
		areas = List.copyOf(areas);
		lines = List.copyOf(lines);
	}
}
