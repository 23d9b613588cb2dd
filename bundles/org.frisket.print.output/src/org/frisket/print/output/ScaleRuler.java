package org.frisket.print.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.print.marks.FreePlace;

/**
 * A line of 100 mm that is printed to be measured: from the middle of its first tick to the middle of its last.
 *
 * @param start   the foot of its first tick, mm on the sheet
 * @param upright whether it runs down the sheet instead of across it
 */
public record ScaleRuler(Point start, boolean upright) {

	/** In mm. */
	public static final double LENGTH = 100;
	private static final double STEP = 10;
	private static final double LINE = 0.2;
	private static final double TICK = 2;
	private static final double END_TICK = 4;
	private static final Bounds ACROSS = new Bounds(-1, -END_TICK - 1, LENGTH + 1, 1);
	private static final Bounds DOWN = new Bounds(-END_TICK - 9, -1, 1, LENGTH + 1);
	/** What is written beside it, mm: from its left end, from its baseline up, and how wide it may be. */
	private static final Bounds ACROSS_CAPTION = new Bounds(46, -4.4, 54, -2.6);
	private static final Bounds DOWN_CAPTION = new Bounds(-12, 49.1, -4, 50.9);

	/** Near the lower or the right edge of a sheet; empty if there is no room. */
	static Optional<ScaleRuler> place(Bounds printable, Predicate<Bounds> free) {
		Point low = new Point(printable.centre().x() - LENGTH / 2, printable.maxY());
		Optional<ScaleRuler> across = FreePlace.nearest(low, ACROSS, printable, free).map(at -> new ScaleRuler(at, false));
		Point right = new Point(printable.maxX(), printable.centre().y() - LENGTH / 2);
		return across.isPresent() ? across
				: FreePlace.nearest(right, DOWN, printable, free).map(at -> new ScaleRuler(at, true));
	}

	public Bounds bounds() {
		return (upright ? DOWN : ACROSS).moved(start);
	}

	/** Where its length is written: as high as capitals. */
	Bounds caption() {
		return (upright ? DOWN_CAPTION : ACROSS_CAPTION).moved(start);
	}

	Region region() {
		List<Piece> pieces = new ArrayList<>();
		// the ticks stand a little above the line, so that no piece overlaps another
		pieces.addAll(box(-LINE / 2, 0, LENGTH + LINE / 2, LINE));
		for (int i = 0; i <= LENGTH / STEP; i++) {
			double height = i == 0 || i == LENGTH / STEP ? END_TICK : TICK;
			pieces.addAll(box(i * STEP - LINE / 2, -height, i * STEP + LINE / 2, 0));
		}
		return new Region(pieces);
	}

	/** Along the ruler and away from it. */
	private List<Piece> box(double from, double top, double to, double bottom) {
		Bounds box = upright ? new Bounds(top, from, bottom, to) : new Bounds(from, top, to, bottom);
		return BleedZone.rectangle(box.moved(start)).pieces();
	}
}
