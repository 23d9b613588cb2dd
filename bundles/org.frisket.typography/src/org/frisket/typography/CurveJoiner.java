package org.frisket.typography;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
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
import org.frisket.geometry.measure.Clearance;
import org.frisket.typography.internal.join.LetterKey;

/**
 * Joins letters that will stand on a curve. There they lean apart or towards each other, so that a text that was joined
 * straight comes apart when it is bent. Here every letter is moved along the curve towards the one before it until
 * they touch, and on by the overlap; those that overlap as much already keep their place.
 * <p>
 * The result is straight text again, with the distances that are right on the curve. Dots and accents are not measured.
 */
public final class CurveJoiner {

	/** Alignment may move a shortened line along the curve, where it bends otherwise. */
	private static final int ROUNDS = 4;
	private static final double SAME_PLACE = 1e-4;
	/** A letter on a curve moves at its head by at most so much more than at its feet. */
	private static final double LEAD = 2;
	private static final int MOST_STEPS = 200;

	private final SetText text;
	private final UnaryOperator<SetText> bend;
	private final double touch;
	private final Tolerance tolerance;
	private final Monitor monitor;
	private final List<Clearance> bodies = new ArrayList<>();

	private CurveJoiner(SetText text, UnaryOperator<SetText> bend, double touch, Tolerance tolerance, Memory memory,
			Monitor monitor) {
		this.text = text;
		this.bend = bend;
		this.touch = touch;
		this.tolerance = tolerance;
		this.monitor = monitor;
		for (Letter letter : text.letters()) {
			monitor.check();
			BodyKey key = new BodyKey(LetterKey.of(letter), tolerance);
			bodies.add(memory.get(key, () -> Clearance.of(body(key.letter().outline(), tolerance, monitor), tolerance)));
		}
	}

	private record BodyKey(LetterKey letter, Tolerance tolerance) {
	}

	/** The same whatever is remembered. @see #join(SetText, UnaryOperator, double, boolean, Tolerance, Memory, Monitor) */
	public static Joined join(SetText text, UnaryOperator<SetText> bend, double touch, boolean joinWords,
			Tolerance tolerance, Monitor monitor) {
		return join(text, bend, touch, joinWords, tolerance, Memory.NONE, monitor);
	}

	/**
	 * @param text      set straight and not yet joined
	 * @param bend      how it is brought to the curve, as {@code t -> ArcLayout.along(t, arc).text()}
	 * @param touch     the overlap in mm
	 * @param joinWords whether blanks are closed too
	 * @param memory    of the bodies of letters, which are cleaned and measured for themselves; the result is the same
	 *                  whatever is remembered
	 * @throws IllegalArgumentException unless {@code touch} is positive and finite
	 */
	public static Joined join(SetText text, UnaryOperator<SetText> bend, double touch, boolean joinWords,
			Tolerance tolerance, Memory memory, Monitor monitor) {
		if (!(touch > 0) || !Double.isFinite(touch)) {
			throw new IllegalArgumentException("touch must be positive and finite, got " + touch);
		}
		CurveJoiner joiner = new CurveJoiner(text, bend, touch, tolerance, memory, monitor);
		Joined joined = joiner.round(text, joinWords);
		for (int i = 1; i < ROUNDS; i++) {
			Joined again = joiner.round(joined.text(), joinWords);
			boolean settled = areSame(joined.text().lines(), again.text().lines());
			joined = again;
			if (settled) {
				break;
			}
		}
		return joined;
	}

	private static boolean areSame(List<TextLine> one, List<TextLine> other) {
		for (int i = 0; i < one.size(); i++) {
			if (Math.abs(one.get(i).left() - other.get(i).left()) > SAME_PLACE
					|| Math.abs(one.get(i).width() - other.get(i).width()) > SAME_PLACE) {
				return false;
			}
		}
		return true;
	}

	/** @param frame whose lines stand as they are thought to stand in the end */
	private Joined round(SetText frame, boolean joinWords) {
		List<Letter> letters = text.letters();
		double[] shifts = new double[letters.size()];
		double[] shortened = new double[text.lines().size()];
		List<Integer> loose = new ArrayList<>();
		for (int i = 0; i < shifts.length; i++) {
			monitor.check();
			Letter letter = letters.get(i);
			shifts[i] = shortened[letter.line()];
			boolean follows = i > 0 && letters.get(i - 1).line() == letter.line()
					&& (joinWords || letters.get(i - 1).word() == letter.word());
			if (follows) {
				double movement = movement(frame, shifts, i);
				if (Double.isNaN(movement)) {
					loose.add(i);
				} else {
					shifts[i] += movement;
				}
			}
			shortened[letter.line()] = shifts[i];
			monitor.worked((i + 1.0) / shifts.length);
		}
		return Joiner.placed(text, shifts, shortened, loose, List.of());
	}

	/** Not a number if the two do not meet. */
	private double movement(SetText frame, double[] shifts, int i) {
		Clearance before = bodies.get(i - 1).at(place(frame, i - 1, shifts[i - 1]));
		double at = touch;
		double furthest = -(text.letters().get(i).origin().x() - text.letters().get(i - 1).origin().x()
				+ text.letters().get(i).advance());
		for (int step = 0; step < MOST_STEPS && at > furthest; step++) {
			double distance = bodies.get(i).at(place(frame, i, shifts[i] + at)).to(before);
			if (distance <= tolerance.mm() / 4) {
				return step == 0 ? 0 : at - touch;
			}
			at -= distance / LEAD;
		}
		return Double.NaN;
	}

	/** From a letter's own frame, with the pen at the origin, to the curve. */
	private Transform place(SetText frame, int i, double shift) {
		Letter letter = text.letters().get(i);
		double realigned = frame.lines().get(letter.line()).left() - text.lines().get(letter.line()).left();
		Point pen = letter.origin();
		Contour axes = Contour.polygon(List.of(pen, pen.plus(new Point(1, 0)), pen.plus(new Point(0, 1))));
		Letter probe = new Letter(letter.start(), letter.end(), letter.line(), letter.word(), letter.glyphs(),
				Outline.of(axes), pen, letter.advance(), letter.span()).movedBy(realigned + shift, 0);
		List<Segment> bent = bend.apply(frame.withLetters(List.of(probe))).letters().get(0).outline().contours().get(0)
				.segments();
		Point origin = bent.get(0).start();
		Point right = bent.get(1).start().minus(origin);
		Point down = bent.get(2).start().minus(origin);
		return new Transform(right.x(), right.y(), down.x(), down.y(), origin.x(), origin.y());
	}

	/** The largest part and whatever stands beside it; what lies above or below is a mark. */
	private static Region body(Outline letter, Tolerance tolerance, Monitor monitor) {
		Region parts = new OutlineCleaner().clean(letter, FillRule.NON_ZERO, tolerance, monitor).region();
		Piece largest = null;
		for (Piece piece : parts.pieces()) {
			largest = largest == null || piece.area() > largest.area() ? piece : largest;
		}
		Piece main = largest;
		return new Region(parts.pieces().stream().filter(p -> standsBeside(p, main)).toList());
	}

	private static boolean standsBeside(Piece one, Piece other) {
		double common = Math.min(one.bounds().maxY(), other.bounds().maxY())
				- Math.max(one.bounds().minY(), other.bounds().minY());
		return common > Math.min(one.bounds().height(), other.bounds().height()) / 2;
	}
}
