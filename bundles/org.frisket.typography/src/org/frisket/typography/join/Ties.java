package org.frisket.typography.join;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.measure.Gap;
import org.frisket.geometry.measure.PieceLocator;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;

/**
 * Ties pieces together with bars where the gaps between them are smallest. No bar is set between pieces that hang
 * together already, so that the bars of all are as short as they can be (a minimum spanning tree, after Kruskal).
 */
public final class Ties {

	private Ties() {
	}

	/** Two pieces that may be tied. */
	private record Pair(int one, int other, Gap gap) {
	}

	/**
	 * Ties all pieces that lie near enough to each other.
	 *
	 * @param width of the bars in mm
	 * @param reach the widest gap that is bridged in mm
	 * @throws IllegalArgumentException unless the width is positive and finite
	 */
	public static Tied all(Region region, double width, double reach, Tolerance tolerance, Monitor monitor) {
		Bar.requireWidth(width);
		List<Piece> pieces = region.pieces();
		Groups groups = new Groups(pieces.size());
		List<Bar> bars = bars(pieces, groups, width, reach, tolerance, monitor);
		Region tied = tied(region, bars, tolerance, monitor);
		return new Tied(tied, bars, Tied.allButLargest(tied.pieces()));
	}

	/**
	 * Ties the parts of each letter: the dot of an i, accents, the halves of a colon. What neighbours hold together
	 * already is left as it is.
	 *
	 * @param text   with its letters at their final places
	 * @param region of that text, with whatever else holds it together
	 * @param width  of the bars in mm
	 * @throws IllegalArgumentException unless the width is positive and finite
	 */
	public static Tied marks(SetText text, Region region, double width, Tolerance tolerance, Monitor monitor) {
		Bar.requireWidth(width);
		List<Bar> bars = new ArrayList<>();
		List<List<Piece>> compound = new ArrayList<>();
		Groups held = new Groups(region.pieces().size());
		List<PieceLocator> whole = region.pieces().stream().map(p -> new PieceLocator(p, tolerance)).toList();
		for (Letter letter : text.letters()) {
			monitor.check();
			List<Piece> parts = new OutlineCleaner().clean(letter.outline(), FillRule.NON_ZERO, tolerance, monitor)
					.region().pieces();
			if (parts.size() > 1) {
				compound.add(parts);
				int[] homes = parts.stream().mapToInt(p -> home(p, whole, region, tolerance)).toArray();
				Groups groups = new Groups(parts.size());
				for (int i = 0; i < homes.length; i++) {
					for (int k = 0; k < i; k++) {
						if (homes[i] >= 0 && homes[k] >= 0 && held.areOne(homes[i], homes[k])) {
							groups.unite(i, k);
						}
					}
				}
				bars.addAll(bars(parts, groups, width, Double.POSITIVE_INFINITY, tolerance, monitor));
				for (int home : homes) {
					if (home >= 0 && homes[0] >= 0) {
						held.unite(homes[0], home);
					}
				}
			}
		}
		Region tied = tied(region, bars, tolerance, monitor);
		return new Tied(tied, bars, loose(compound, tied, tolerance));
	}

	/** Where the parts of a letter lie in several pieces, all of those but the largest. */
	private static List<Piece> loose(List<List<Piece>> letters, Region tied, Tolerance tolerance) {
		List<PieceLocator> whole = tied.pieces().stream().map(p -> new PieceLocator(p, tolerance)).toList();
		Set<Piece> loose = new HashSet<>();
		for (List<Piece> parts : letters) {
			loose.addAll(Tied.allButLargest(parts.stream().map(p -> home(p, whole, tied, tolerance))
					.filter(home -> home >= 0).distinct().map(tied.pieces()::get).toList()));
		}
		return tied.pieces().stream().filter(loose::contains).toList();
	}

	/**
	 * A bar between two chosen pieces.
	 *
	 * @param one   number of a piece in the region
	 * @param other number of another
	 * @throws IllegalArgumentException  unless the width is positive and finite and they are two
	 * @throws IndexOutOfBoundsException if there is no such piece
	 */
	public static Tied bridge(Region region, int one, int other, double width, Tolerance tolerance, Monitor monitor) {
		if (one == other) {
			throw new IllegalArgumentException("a bridge from piece " + one + " to itself");
		}
		Piece first = region.pieces().get(one);
		Piece second = region.pieces().get(other);
		Bar bar = Bar.across(Gap.between(first, second, tolerance), first, second, width, tolerance);
		Region tied = tied(region, List.of(bar), tolerance, monitor);
		List<PieceLocator> whole = tied.pieces().stream().map(p -> new PieceLocator(p, tolerance)).toList();
		int home = home(second, whole, tied, tolerance);
		boolean held = home >= 0 && home == home(first, whole, tied, tolerance);
		return new Tied(tied, List.of(bar), held || home < 0 ? List.of() : List.of(tied.pieces().get(home)));
	}

	private static Region tied(Region region, List<Bar> bars, Tolerance tolerance, Monitor monitor) {
		Outline outline = Outline.EMPTY;
		for (Bar bar : bars) {
			outline = outline.plus(bar.outline());
		}
		return bars.isEmpty() ? region : Bars.united(region, outline, tolerance, monitor);
	}

	/** The narrowest gaps first; pairs that have become one on the way are passed over. */
	private static List<Bar> bars(List<Piece> pieces, Groups groups, double width, double reach, Tolerance tolerance,
			Monitor monitor) {
		List<Pair> pairs = new ArrayList<>();
		for (int i = 0; i < pieces.size(); i++) {
			for (int k = i + 1; k < pieces.size(); k++) {
				monitor.check();
				if (!groups.areOne(i, k) && distance(pieces.get(i).bounds(), pieces.get(k).bounds()) <= reach) {
					Gap gap = Gap.between(pieces.get(i), pieces.get(k), tolerance);
					if (gap.width() <= reach) {
						pairs.add(new Pair(i, k, gap));
					}
				}
			}
		}
		pairs.sort(Comparator.comparingDouble(p -> p.gap().width()));
		List<Bar> bars = new ArrayList<>();
		for (Pair pair : pairs) {
			if (!groups.areOne(pair.one(), pair.other())) {
				groups.unite(pair.one(), pair.other());
				bars.add(Bar.across(pair.gap(), pieces.get(pair.one()), pieces.get(pair.other()), width, tolerance));
			}
		}
		return bars;
	}

	private static double distance(Bounds a, Bounds b) {
		double dx = Math.max(0, Math.max(b.minX() - a.maxX(), a.minX() - b.maxX()));
		double dy = Math.max(0, Math.max(b.minY() - a.maxY(), a.minY() - b.maxY()));
		return Math.hypot(dx, dy);
	}

	/** The piece of the whole in which a part of a letter lies; -1 if it has been cut away. */
	private static int home(Piece part, List<PieceLocator> whole, Region region, Tolerance tolerance) {
		Point inside = new PieceLocator(part, tolerance).inside();
		for (int i = 0; i < whole.size(); i++) {
			if (region.pieces().get(i).bounds().contains(inside) && whole.get(i).holds(inside)) {
				return i;
			}
		}
		return -1;
	}
}
