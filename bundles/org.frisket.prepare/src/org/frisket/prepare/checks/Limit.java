package org.frisket.prepare.checks;

import java.util.Arrays;
import java.util.Optional;

import org.frisket.prepare.Unit;
import org.frisket.print.picture.Resolution;

/**
 * One thing that stock and tool allow so much of and no more. What is usual is common practice for card of about 0.3 mm
 * and a drag knife, no source; a studio puts its own test cuts in its place.
 */
public enum Limit {

	/** The narrowest part that is to survive the blade. */
	THINNEST_STROKE("thinnest-stroke", Unit.MM, 0.001, 1000, 1),
	/** The least length of a piece that can still be held and picked. */
	SMALLEST_PIECE("smallest-piece", Unit.MM, 0.001, 1000, 2),
	/** The least distance of two cuts; between nearer ones the stock tears. */
	NARROWEST_GAP("narrowest-gap", Unit.MM, 0, 1000, 0.5),
	/** The diameter of the largest disc in a hole that still comes out clean: four times the caliper, at most 2 mm. */
	SMALLEST_HOLE("smallest-hole", Unit.MM, 0, 1000, 1.2),
	/** How far the tip of the blade trails the axis that it swivels about. */
	BLADE_OFFSET("blade-offset", Unit.MM, 0, 5, 0.25),
	/** The least angle of a corner whose sides are longer than the blade's offset. */
	SHARPEST_CORNER("sharpest-corner", Unit.DEGREES, 0, 180, 20),
	/** The least way between two nodes. */
	NODE_STEP("node-step", Unit.MM, 0, 10, 0.05),
	/** How many nodes a contour may have on each mm of its length. */
	NODES_PER_MM("nodes-per-mm", Unit.PER_MM, 0.01, 1000, 4),
	/** The edge of a sheet that cannot be worked. */
	SHEET_MARGIN("sheet-margin", Unit.MM, 0, 1000, 5),
	/** Width of the sheets of a stock; 0 if it is not known, and nothing is too large then. */
	SHEET_WIDTH("sheet-width", Unit.MM, 0, 100_000, 0),
	/** Height of the sheets of a stock; 0 if it is not known. */
	SHEET_HEIGHT("sheet-height", Unit.MM, 0, 100_000, 0),
	/** The least height of a small x that a pen can draw. */
	PEN_X_HEIGHT("pen-x-height", Unit.MM, 0, 1000, 2),
	/** How fine pictures are to be in print; common practice, no source. */
	PICTURE_RESOLUTION("picture-resolution", Unit.DPI, 0, 20_000, Resolution.COARSE),
	/** The least distance of printed art from a cut, or cuts that are a little off are seen; common practice, no source. */
	SAFE_AREA("safe-area", Unit.MM, 0, 100, 3),
	/** How far print is to go on beyond a cut through it; common practice for cards and labels, no source. */
	BLEED("bleed", Unit.MM, 0, 50, 3);

	private final String key;
	private final Unit unit;
	private final double least;
	private final double most;
	private final double usual;

	Limit(String key, Unit unit, double least, double most, double usual) {
		this.key = key;
		this.unit = unit;
		this.least = least;
		this.most = most;
		this.usual = usual;
	}

	/** Its name in files. */
	public String key() {
		return key;
	}

	public Unit unit() {
		return unit;
	}

	/** The least value it can have. */
	public double least() {
		return least;
	}

	/** The greatest value it can have. */
	public double most() {
		return most;
	}

	/** Its value for card. */
	public double usual() {
		return usual;
	}

	public static Optional<Limit> of(String key) {
		return Arrays.stream(values()).filter(limit -> limit.key.equals(key)).findFirst();
	}
}
