package org.frisket.typography;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.typography.internal.join.StackedWord;

/**
 * Moves the letters of a stack up until each overlaps the ones above it by a given length, so that a column leaves as
 * one piece. The rules are those of {@link Joiner}, turned by a quarter, but that dots and accents are met like any
 * other part of their letter.
 */
public final class StackJoiner {

	/** Share of the tolerance spent on flattening each of the two outlines. */
	private static final double FLATTENING = 0.4;

	private StackJoiner() {
	}

	/** The same whatever is remembered. @see #join(SetText, double, boolean, Tolerance, Memory, Monitor) */
	public static Joined join(SetText stack, double touch, boolean joinWords, Tolerance tolerance, Monitor monitor) {
		return join(stack, touch, joinWords, tolerance, Memory.NONE, monitor);
	}

	/**
	 * @param stack     as {@link StackSetter} gives it
	 * @param touch     the overlap in mm
	 * @param joinWords whether blanks are closed too
	 * @param memory    of words that were joined and of shapes of letters; the result is the same whatever is remembered
	 * @return the shifts are downwards in mm, so none is positive but for the alignment of the columns; no letter is
	 *         called detached
	 * @throws IllegalArgumentException unless {@code touch} is positive and finite
	 */
	public static Joined join(SetText stack, double touch, boolean joinWords, Tolerance tolerance, Memory memory,
			Monitor monitor) {
		if (!(touch > 0) || !Double.isFinite(touch)) {
			throw new IllegalArgumentException("touch must be positive and finite, got " + touch);
		}
		List<Letter> letters = stack.letters();
		double[] shifts = new double[letters.size()];
		List<Integer> loose = new ArrayList<>();
		for (int from = 0; from < shifts.length;) {
			monitor.check();
			int to = wordEnd(letters, from, joinWords);
			boolean newColumn = from == 0 || letters.get(from).line() != letters.get(from - 1).line();
			double shift = newColumn ? 0 : shifts[from - 1];
			StackedWord word = StackedWord.of(letters.subList(from, to), touch, tolerance.mm() * FLATTENING, memory, monitor);
			for (int i = from; i < to; i++) {
				shifts[i] = shift + word.shifts().get(i - from);
			}
			int first = from;
			word.loose().forEach(n -> loose.add(first + n));
			from = to;
			monitor.worked((double) from / shifts.length);
		}
		return aligned(stack, shifts, loose);
	}

	private static int wordEnd(List<Letter> letters, int from, boolean wholeColumn) {
		Letter first = letters.get(from);
		int to = from;
		while (to < letters.size() && letters.get(to).line() == first.line()
				&& (wholeColumn || letters.get(to).word() == first.word())) {
			to++;
		}
		return to;
	}

	/** Columns keep their alignment to each other by the depths they have now. */
	private static Joined aligned(SetText stack, double[] shifts, List<Integer> loose) {
		List<Letter> letters = stack.letters();
		double[] depths = new double[stack.lines().size()];
		for (int i = 0; i < shifts.length; i++) {
			Letter letter = letters.get(i);
			double depth = letter.origin().y() + shifts[i] - stack.lines().get(letter.line()).baseline();
			depths[letter.line()] = Math.max(depths[letter.line()], depth);
		}
		double deepest = Arrays.stream(depths).max().orElse(0);
		List<TextLine> lines = new ArrayList<>();
		for (TextLine line : stack.lines()) {
			double top = TextSetter.left(stack.setting().alignment(), deepest, depths[lines.size()]);
			lines.add(new TextLine(line.start(), line.end(), line.left(), line.width(), top));
		}
		List<Letter> moved = new ArrayList<>();
		List<Double> distances = new ArrayList<>();
		for (Letter letter : letters) {
			double realigned = lines.get(letter.line()).baseline() - stack.lines().get(letter.line()).baseline();
			double distance = shifts[moved.size()] + realigned;
			moved.add(letter.movedBy(0, distance));
			distances.add(distance);
		}
		return new Joined(new SetText(stack.text(), stack.face(), stack.setting(), moved, stack.missing(), lines,
				stack.spans()), distances, loose, List.of());
	}
}
