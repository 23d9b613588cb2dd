package org.frisket.prepare.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.measure.Gap;
import org.frisket.geometry.measure.LocalThickness;
import org.frisket.geometry.measure.Measures;
import org.frisket.geometry.measure.PieceLocator;
import org.frisket.geometry.measure.ThinPlace;
import org.frisket.prepare.Fitness;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;

/** Measures what decides whether letters can be cut. */
public final class FitnessMeasures {

	/** In degrees: what turns by less is smooth, and only rounding makes it a corner. */
	private static final double STRAIGHT = 179;

	private static final double FIRST_SHARE = 0.55;
	private static final double NEXT = 1.4;

	/** A piece of a letter, and the number of the piece of the whole it is part of. */
	private record Part(int letter, int home, Piece piece) {
	}

	private final SetText text;
	private final Region region;
	private final Tolerance tolerance;
	private final Monitor monitor;

	private FitnessMeasures(SetText text, Tolerance tolerance, Monitor monitor) {
		this.text = text;
		this.tolerance = tolerance;
		this.monitor = monitor;
		region = clean(text.outline().contours());
	}

	public static Fitness of(SetText text, Tolerance tolerance, Monitor monitor) {
		return new FitnessMeasures(text, tolerance, monitor).fitness();
	}

	private Region clean(List<Contour> contours) {
		return new OutlineCleaner()
				.clean(new Outline(contours), FillRule.NON_ZERO, tolerance, monitor).region();
	}

	private Fitness fitness() {
		return new Fitness(text.capHeight(),
				thinnestStroke(), narrowestGap(), smallestCounter(), sharpestPoint(), smallestPiece(),
				region.pieces().size());
	}

	private static Fitness.Measure less(Fitness.Measure one, Fitness.Measure other) {
		return one == null || other.value() < one.value() ? other : one;
	}

	/**
	 * Looked for below widths that grow from well under the mean one, where there is little to look at; at the latest
	 * all of a piece is thinner.
	 */
	private Optional<Fitness.Measure> thinnestStroke() {
		double width = FIRST_SHARE * region.pieces().stream().mapToDouble(FitnessMeasures::meanWidth).min().orElse(0);
		List<ThinPlace> thin = List.of();
		while (width > 0 && thin.isEmpty()) {
			monitor.check();
			thin = LocalThickness.thinnerThan(region, width, tolerance, monitor);
			width *= NEXT;
		}
		return thin.stream().findFirst().map(place -> new Fitness.Measure(place.thickness(), place.place()));
	}

	/** That of a long strip of the same area and perimeter. */
	private static double meanWidth(Piece piece) {
		return 2 * piece.area() / piece.contours().stream().mapToDouble(Contour::length).sum();
	}

	private Optional<Fitness.Measure> smallestPiece() {
		Fitness.Measure smallest = null;
		for (Piece piece : region.pieces()) {
			smallest = less(smallest, new Fitness.Measure(Measures.smallestBox(piece, tolerance).wide(),
					piece.bounds().centre()));
		}
		return Optional.ofNullable(smallest);
	}

	private Optional<Fitness.Measure> smallestCounter() {
		Fitness.Measure smallest = null;
		for (Piece piece : region.pieces()) {
			for (Contour hole : piece.holes()) {
				monitor.check();
				Piece counter = new Piece(hole.reversed(), List.of());
				smallest = less(smallest, new Fitness.Measure(2 * Measures.inscribedRadius(counter, tolerance),
						hole.bounds().centre()));
			}
		}
		return Optional.ofNullable(smallest);
	}

	private Optional<Fitness.Measure> sharpestPoint() {
		Fitness.Measure sharpest = null;
		for (Contour contour : region.contours()) {
			Segment before = contour.segments().get(contour.segments().size() - 1);
			for (Segment after : contour.segments()) {
				double angle = angle(before.endTangent(), after.startTangent());
				if (angle < STRAIGHT) {
					sharpest = less(sharpest, new Fitness.Measure(angle, after.start()));
				}
				before = after;
			}
		}
		return Optional.ofNullable(sharpest);
	}

	/** Of the material, which lies to the left of every contour to the viewer; 180 degrees where the way is straight. */
	private static double angle(Point in, Point out) {
		double cross = in.cross(out);
		double dot = in.x() * out.x() + in.y() * out.y();
		return 180 + Math.toDegrees(Math.atan2(cross, dot));
	}

	private Optional<Fitness.Measure> narrowestGap() {
		List<Part> parts = parts();
		Fitness.Measure narrowest = null;
		for (int i = 0; i < parts.size(); i++) {
			for (int k = i + 1; k < parts.size(); k++) {
				Part one = parts.get(i);
				Part other = parts.get(k);
				if (one.letter() == other.letter() || one.home() == other.home() || narrowest != null
						&& distance(one.piece().bounds(), other.piece().bounds()) >= narrowest.value()) {
					continue;
				}
				monitor.check();
				Gap gap = Gap.between(one.piece(), other.piece(), tolerance);
				narrowest = less(narrowest, new Fitness.Measure(gap.width(), gap.from().plus(gap.to()).times(0.5)));
			}
		}
		return Optional.ofNullable(narrowest);
	}

	private static double distance(Bounds a, Bounds b) {
		double dx = Math.max(0, Math.max(b.minX() - a.maxX(), a.minX() - b.maxX()));
		double dy = Math.max(0, Math.max(b.minY() - a.maxY(), a.minY() - b.maxY()));
		return Math.hypot(dx, dy);
	}

	private List<Part> parts() {
		record Key(List<Integer> glyphs, int span) {
		}
		List<PieceLocator> homes = region.pieces().stream().map(piece -> new PieceLocator(piece, tolerance)).toList();
		Map<Key, List<Piece>> known = new HashMap<>();
		List<Part> parts = new ArrayList<>();
		for (int i = 0; i < text.letters().size(); i++) {
			Letter letter = text.letters().get(i);
			// letters of several glyphs may have their accents anywhere
			Transform fromOrigin = Transform.translation(letter.origin().x(), letter.origin().y());
			List<Piece> pieces = letter.glyphs().size() == 1
					? known.computeIfAbsent(new Key(letter.glyphs(), letter.span()),
							key -> clean(letter.outline().transformed(fromOrigin.inverse()).contours()).pieces())
					: clean(letter.outline().transformed(fromOrigin.inverse()).contours()).pieces();
			for (Piece piece : new Region(pieces).transformed(fromOrigin).pieces()) {
				Point inside = new PieceLocator(piece, tolerance).inside();
				for (int home = 0; home < homes.size(); home++) {
					if (region.pieces().get(home).bounds().contains(inside) && homes.get(home).holds(inside)) {
						parts.add(new Part(i, home, piece));
						break;
					}
				}
			}
		}
		return parts;
	}
}
