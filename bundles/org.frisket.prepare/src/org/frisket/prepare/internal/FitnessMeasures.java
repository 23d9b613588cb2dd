package org.frisket.prepare.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.measure.NarrowestGap;
import org.frisket.geometry.measure.PieceLocator;
import org.frisket.geometry.measure.PieceMeasures;
import org.frisket.geometry.measure.SharpCorners;
import org.frisket.geometry.measure.StrokeWidths;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.Fitness;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;

/**
 * Measures what decides whether letters can be cut. They are measured at one size, whatever size they have: a letter is
 * then measured once, and what was found serves for every size.
 */
public final class FitnessMeasures {

	/** In mm, of a capital H. */
	private static final double SIZE = 100;
	/** The largest height in mm that is thought of. */
	private static final double LARGEST = 1000;

	/** A few hundred fonts' letters of one wording. */
	private static final ContentCache KNOWN = new ContentCache(8000);

	private final Region region;
	private final List<Outline> letters;
	private final double height;
	private final Limits limits;
	private final Tolerance tolerance;
	private final Monitor monitor;

	private FitnessMeasures(Region region, List<Outline> letters, double height, Limits limits, Tolerance tolerance,
			Monitor monitor) {
		this.region = region;
		this.letters = letters;
		this.height = height;
		this.limits = limits;
		this.tolerance = tolerance;
		this.monitor = monitor;
	}

	public static Fitness of(SetText text, Limits limits, Tolerance tolerance, Monitor monitor) {
		Transform larger = Transform.scaling(SIZE / text.capHeight(), SIZE / text.capHeight());
		Region region = new OutlineCleaner(KNOWN::get).clean(text.outline().transformed(larger), FillRule.NON_ZERO,
				Tolerance.DEFAULT, monitor).region();
		List<Outline> letters = text.letters().stream().map(Letter::outline).map(o -> o.transformed(larger)).toList();
		return new FitnessMeasures(region, letters, text.capHeight(), limits, tolerance, monitor).fitness();
	}

	/** @param letters where they lie in the region; a piece that is made of none belongs to all */
	public static Fitness of(Region region, List<Outline> letters, double height, Limits limits, Tolerance tolerance,
			Monitor monitor) {
		Transform larger = Transform.scaling(SIZE / height, SIZE / height);
		return new FitnessMeasures(region.transformed(larger), letters.stream().map(o -> o.transformed(larger)).toList(),
				height, limits, tolerance, monitor).fitness();
	}

	private Fitness fitness() {
		double back = height / SIZE;
		PieceMeasures.Looking looking = new PieceMeasures.Looking(Tolerance.DEFAULT, new Tolerance(tolerance.mm() / back),
				limits.thinnestStroke() * SIZE / LARGEST, tolerance.mm() / limits.thinnestStroke());
		Fitness.Measure stroke = null;
		Fitness.Measure counter = null;
		Fitness.Measure piece = null;
		double growing = Double.POSITIVE_INFINITY;
		for (Piece each : region.pieces()) {
			monitor.check();
			Point origin = each.outer().start();
			PieceMeasures measures = PieceMeasures.of(each, looking, KNOWN::get, monitor);
			stroke = less(stroke, measure(measures.thinnest(), origin, back));
			growing = Math.min(growing, measures.growing().mm());
			if (measures.smallestCounter().isPresent()) {
				counter = less(counter, measure(measures.smallestCounter().get(), origin, back));
			}
			piece = less(piece, new Fitness.Measure(measures.length() * back, each.bounds().centre().times(back)));
		}
		return new Fitness(height, Optional.ofNullable(stroke), narrowestGap(back), Optional.ofNullable(counter),
				sharpestPoint(back), Optional.ofNullable(piece), region.pieces().size(),
				smallestHeight(growing, piece, counter, looking.from()));
	}

	private static Fitness.Measure measure(StrokeWidths.Width width, Point origin, double back) {
		return new Fitness.Measure(width.mm() * back, width.place().plus(origin).times(back));
	}

	private static Fitness.Measure less(Fitness.Measure one, Fitness.Measure other) {
		return one == null || other.value() < one.value() ? other : one;
	}

	/** By what the checks of strokes, pieces and holes ask for. */
	private OptionalDouble smallestHeight(double growing, Fitness.Measure piece, Fitness.Measure counter, double from) {
		if (piece == null || growing <= from) {
			return OptionalDouble.empty();
		}
		double ofStrokes = SIZE * limits.thinnestStroke() / growing;
		double ofPieces = height * limits.smallestPiece() / piece.value();
		double ofHoles = counter == null ? 0 : height * limits.smallestHole() / counter.value();
		return OptionalDouble.of(Math.max(ofStrokes, Math.max(ofPieces, ofHoles)));
	}

	private Optional<Fitness.Measure> sharpestPoint(double back) {
		return SharpCorners.sharpest(region.contours())
				.map(corner -> new Fitness.Measure(corner.angle(), corner.place().times(back)));
	}

	private Optional<Fitness.Measure> narrowestGap(double back) {
		List<Set<Integer>> lettersOf = lettersOf();
		return NarrowestGap.of(region, (one, other) -> isBetweenLetters(lettersOf.get(one), lettersOf.get(other)),
				Tolerance.DEFAULT, monitor).map(gap -> measure(gap, Point.ORIGIN, back));
	}

	/** The dot of an i and its stem are pieces of one letter. */
	private static boolean isBetweenLetters(Set<Integer> one, Set<Integer> other) {
		return !(one.size() == 1 && one.equals(other));
	}

	/** The numbers of the letters that each piece holds. */
	private List<Set<Integer>> lettersOf() {
		List<Set<Integer>> found = new ArrayList<>();
		PieceLocator[] locators = new PieceLocator[region.pieces().size()];
		region.pieces().forEach(piece -> found.add(new HashSet<>()));
		for (int letter = 0; letter < letters.size(); letter++) {
			for (Contour contour : letters.get(letter).contours()) {
				int piece = pieceAt(contour, locators);
				if (piece >= 0) {
					found.get(piece).add(letter);
				}
			}
		}
		return found;
	}

	/** The piece a letter's contour went into: where it starts is within it, or on its edge. */
	private int pieceAt(Contour contour, PieceLocator[] locators) {
		Point start = contour.start();
		int only = -1;
		int count = 0;
		for (int i = 0; i < region.pieces().size(); i++) {
			if (region.pieces().get(i).bounds().grown(Tolerance.DEFAULT.mm()).contains(start)) {
				only = i;
				count++;
			}
		}
		if (count <= 1) {
			return only;
		}
		double nearest = Double.POSITIVE_INFINITY;
		for (int i = 0; i < region.pieces().size(); i++) {
			if (region.pieces().get(i).bounds().grown(Tolerance.DEFAULT.mm()).contains(start)) {
				if (locators[i] == null) {
					locators[i] = new PieceLocator(region.pieces().get(i), Tolerance.DEFAULT);
				}
				double distance = locators[i].distance(start);
				if (distance < nearest) {
					nearest = distance;
					only = i;
				}
			}
		}
		return only;
	}
}
