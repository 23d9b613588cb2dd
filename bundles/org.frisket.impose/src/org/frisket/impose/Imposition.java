package org.frisket.impose;

import java.util.List;

/**
 * What is to be laid out on what.
 *
 * @param parts   in any order
 * @param grounds the sheets at hand, in the order in which they are to be used: leftovers first; or one roll
 * @param gap     in mm, between parts
 * @param margin  in mm, along every edge of a sheet
 * @param fixed   placements that stay; their copies come on top of the parts' quantities
 */
public record Imposition(List<Part> parts, List<Ground> grounds, double gap, double margin, List<Placement> fixed) {

	/** @throws IllegalArgumentException if the margins leave nothing of a sheet, or nothing is given */
	public Imposition {
		parts = List.copyOf(parts);
		grounds = List.copyOf(grounds);
		fixed = List.copyOf(fixed);
		if (!(gap >= 0) || !(margin >= 0) || Double.isInfinite(gap)) {
			throw new IllegalArgumentException("gap " + gap + " mm, margin " + margin + " mm");
		}
		if (grounds.isEmpty()) {
			throw new IllegalArgumentException("no sheet to lay parts on");
		}
		for (Ground ground : grounds) {
			if (ground.width() <= 2 * margin || ground.length() <= 2 * margin) {
				throw new IllegalArgumentException("margins of " + margin + " mm leave nothing of a sheet of "
						+ ground.length() + " \u00d7 " + ground.width() + " mm");
			}
		}
	}

	public Imposition(List<Part> parts, Ground ground, double gap, double margin) {
		this(parts, List.of(ground), gap, margin, List.of());
	}
}
