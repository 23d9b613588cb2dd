package org.frisket.typography.join;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.measure.Edges;
import org.frisket.geometry.measure.Gap;
import org.frisket.geometry.measure.PieceLocator;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;

/** Bars between letters, set by hand. */
public final class Bridges {

	/** Why a bridge cannot be. */
	public enum Failure {
		/** A character of it leaves no mark, or is gone. */
		NO_LETTER,
		/** The letters touch, or there are no two parts of the one letter. */
		NO_GAP,
		/** The bar does not hold them together. */
		MISSED
	}

	/**
	 * What became of a wish.
	 *
	 * @param gap     from edge to edge; absent only if there is no letter or no gap
	 * @param failure if it holds nothing
	 */
	public record Outcome(BridgeWish wish, Optional<Gap> gap, Optional<Failure> failure) {
	}

	/** @param outcomes one for each wish, in their order */
	public record Bridged(Region region, List<Outcome> outcomes) {

		public Bridged {
			outcomes = List.copyOf(outcomes);
		}
	}

	private Bridges() {
	}

	/**
	 * @param set       the letters as they were set straight
	 * @param placed    the same letters at their final places
	 * @param lettering what bars are set in
	 * @param body      what becomes of the clean outline of a letter by itself, such as a heavier one
	 */
	public static Bridged of(SetText set, SetText placed, Region lettering, List<BridgeWish> wishes,
			UnaryOperator<Region> body, Tolerance tolerance, Monitor monitor) {
		if (wishes.isEmpty()) {
			return new Bridged(lettering, List.of());
		}
		Setting setting = new Setting(set, placed, body, new HashMap<>(), tolerance, monitor);
		List<Span> spans = wishes.stream().map(setting::span).toList();
		Outline bars = Outline.EMPTY;
		for (Span span : spans) {
			bars = span.bar == null ? bars : bars.plus(span.bar.outline());
		}
		Region region = bars.isEmpty() ? lettering : Bars.united(lettering, bars, tolerance, monitor);
		List<PieceLocator> pieces = region.pieces().stream().map(piece -> new PieceLocator(piece, tolerance)).toList();
		return new Bridged(region, spans.stream().map(span -> span.outcome(pieces, tolerance)).toList());
	}

	/** What a wish comes to: a bar between two pieces, or a reason. */
	private record Span(BridgeWish wish, Failure failure, Gap gap, Bar bar, Piece one, Piece other) {

		static Span none(BridgeWish wish, Failure failure) {
			return new Span(wish, failure, null, null, null, null);
		}

		Outcome outcome(List<PieceLocator> pieces, Tolerance tolerance) {
			if (bar == null) {
				return new Outcome(wish, Optional.empty(), Optional.of(failure));
			}
			Point middle = bar.from().towards(bar.to(), 0.5);
			Point first = new PieceLocator(one, tolerance).inside();
			Point second = new PieceLocator(other, tolerance).inside();
			boolean held = pieces.stream().anyMatch(p -> p.holds(middle) && p.holds(first) && p.holds(second));
			return new Outcome(wish, Optional.of(gap), held ? Optional.empty() : Optional.of(Failure.MISSED));
		}
	}

	private record Setting(SetText set, SetText placed, UnaryOperator<Region> body, Map<Integer, List<Piece>> known,
			Tolerance tolerance, Monitor monitor) {

		Span span(BridgeWish wish) {
			monitor.check();
			int one = letter(wish.one());
			int other = letter(wish.other());
			if (one < 0 || other < 0 || pieces(one).isEmpty() || pieces(other).isEmpty()) {
				return Span.none(wish, Failure.NO_LETTER);
			}
			return wish.ends().map(ends -> at(wish, ends, one, other)).orElseGet(() -> narrowest(wish, one, other));
		}

		private int letter(int index) {
			for (int i = 0; i < placed.letters().size(); i++) {
				Letter letter = placed.letters().get(i);
				if (letter.start() <= index && index < letter.end()) {
					return i;
				}
			}
			return -1;
		}

		private List<Piece> pieces(int letter) {
			return known.computeIfAbsent(letter, i -> body.apply(new OutlineCleaner()
					.clean(placed.letters().get(i).outline(), FillRule.NON_ZERO, tolerance, monitor).region()).pieces());
		}

		private Span narrowest(BridgeWish wish, int one, int other) {
			Span best = Span.none(wish, Failure.NO_GAP);
			for (Piece first : pieces(one)) {
				for (Piece second : pieces(other)) {
					if (first != second) {
						Gap gap = Gap.between(first, second, tolerance);
						if (best.gap == null || gap.width() < best.gap.width()) {
							best = new Span(wish, null, gap, null, first, second);
						}
					}
				}
			}
			return best.gap == null ? best : barred(best);
		}

		private Span at(BridgeWish wish, BridgeWish.Ends ends, int one, int other) {
			Edge first = edge(one, ends.one());
			Edge second = edge(other, ends.other());
			return barred(new Span(wish, null, new Gap(first.place, second.place), null, first.piece, second.piece));
		}

		private Span barred(Span span) {
			boolean apart = span.gap.width() > tolerance.mm() && span.gap.width() < Double.POSITIVE_INFINITY;
			return apart ? new Span(span.wish, null, span.gap,
					Bar.across(span.gap, span.one, span.other, span.wish.width(), tolerance), span.one, span.other)
					: Span.none(span.wish, Failure.NO_GAP);
		}

		private record Edge(Piece piece, Point place) {
		}

		private Edge edge(int letter, Point own) {
			Point wanted = LetterFrame.of(placed, set.letters().get(letter), placed.letters().get(letter)).apply(own);
			return pieces(letter).stream().map(piece -> new Edge(piece, Edges.nearest(piece, wanted, tolerance)))
					.min(Comparator.comparingDouble(edge -> edge.place.distance(wanted))).orElseThrow();
		}
	}
}
