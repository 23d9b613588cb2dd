package org.frisket.typography;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.typography.internal.join.JoinedWord;
import org.frisket.typography.internal.join.LetterKey;
import org.frisket.typography.internal.join.LetterShape;

/**
 * Moves the letters of each word together along the line until neighbours overlap by a given length, so that the word
 * leaves as one piece.
 * <p>
 * The overlap is measured on the outlines, row by row, as the deepest reach of one letter into the other along the
 * line. Letters that overlap as much already keep their distance, and everything to the right of a letter that moves
 * goes along, so that blanks keep their width. A letter that reaches past its neighbour is met by whichever letter
 * of the word it would run into first. Dots and accents are not measured; they go with their letter. A letter that
 * shares hardly any rows with its neighbour, so that no movement along the line can join it, keeps its distance from
 * the letter before it; of the two that do not meet, the smaller is the loose one, and the next letter is joined to
 * the other.
 * <p>
 * Lines keep their alignment to each other; a justified one gets back at its blanks what joining took from it.
 */
public final class Joiner {

	/** Share of the tolerance spent on flattening each of the two outlines. */
	private static final double FLATTENING = 0.4;

	private Joiner() {
	}

	/** Joins the letters of each word; words stay apart. @see #join(SetText, double, boolean, Tolerance, Monitor) */
	public static Joined join(SetText text, double touch, Tolerance tolerance, Monitor monitor) {
		return join(text, touch, false, tolerance, monitor);
	}

	/** The same whatever is remembered. @see #join(SetText, double, boolean, Tolerance, Memory, Monitor) */
	public static Joined join(SetText text, double touch, boolean joinWords, Tolerance tolerance, Monitor monitor) {
		return join(text, touch, joinWords, tolerance, Memory.NONE, monitor);
	}

	/**
	 * @param touch     the overlap in mm
	 * @param joinWords whether blanks are closed too, so that each line leaves as one piece
	 * @param memory    of words that were joined and of shapes of letters, for texts that have some of them in common;
	 *                  the result is the same whatever is remembered
	 * @throws IllegalArgumentException unless {@code touch} is positive and finite
	 */
	public static Joined join(SetText text, double touch, boolean joinWords, Tolerance tolerance, Memory memory,
			Monitor monitor) {
		if (!(touch > 0) || !Double.isFinite(touch)) {
			throw new IllegalArgumentException("touch must be positive and finite, got " + touch);
		}
		List<Letter> letters = text.letters();
		Function<LetterKey, LetterShape> shapes = shapes(tolerance.mm() * FLATTENING, memory);
		double[] shifts = new double[letters.size()];
		double[] shortened = new double[text.lines().size()];
		List<Integer> loose = new ArrayList<>();
		List<Integer> detached = new ArrayList<>();
		for (int from = 0; from < shifts.length;) {
			monitor.check();
			int line = letters.get(from).line();
			int to = wordEnd(letters, from, joinWords);
			JoinedWord word = JoinedWord.of(letters.subList(from, to), touch, tolerance.mm() * FLATTENING, shapes, memory,
					monitor);
			for (int i = from; i < to; i++) {
				shifts[i] = shortened[line] + word.shifts().get(i - from);
			}
			shortened[line] = shifts[to - 1];
			addFrom(from, word.loose(), loose);
			addFrom(from, word.detached(), detached);
			from = to;
			monitor.worked((double) from / shifts.length);
		}
		if (text.setting().alignment() == Alignment.JUSTIFY && !joinWords) {
			stretch(text, shifts, shortened);
		}
		return placed(text, shifts, shortened, loose, detached);
	}

	/** Equal letters of a text share one shape even where nothing is remembered. */
	private static Function<LetterKey, LetterShape> shapes(double deviation, Memory memory) {
		record Key(LetterKey letter, double deviation) {
		}
		Map<LetterKey, LetterShape> known = new HashMap<>();
		return letter -> known.computeIfAbsent(letter,
				key -> memory.get(new Key(key, deviation), () -> LetterShape.of(key, deviation)));
	}

	private static int wordEnd(List<Letter> letters, int from, boolean wholeLine) {
		Letter first = letters.get(from);
		int to = from;
		while (to < letters.size() && letters.get(to).line() == first.line()
				&& (wholeLine || letters.get(to).word() == first.word())) {
			to++;
		}
		return to;
	}

	private static void addFrom(int base, List<Integer> numbers, List<Integer> sum) {
		numbers.forEach(n -> sum.add(base + n));
	}

	/** Widens the blanks of lines that had been stretched to the width of the block. */
	private static void stretch(SetText text, double[] shifts, double[] shortened) {
		double block = text.lines().stream().mapToDouble(TextLine::width).max().orElse(0);
		List<Letter> letters = text.letters();
		for (int from = 0; from < shifts.length;) {
			int line = letters.get(from).line();
			int to = wordEnd(letters, from, true);
			int[] blanks = new int[to - from];
			for (int i = 1; i < blanks.length; i++) {
				boolean blank = letters.get(from + i).word() != letters.get(from + i - 1).word();
				blanks[i] = blanks[i - 1] + (blank ? 1 : 0);
			}
			int all = blanks[blanks.length - 1];
			if (all > 0 && text.lines().get(line).width() > block - 1e-9) {
				for (int i = 0; i < blanks.length; i++) {
					shifts[from + i] -= shortened[line] * blanks[i] / all;
				}
				shortened[line] = 0;
			}
			from = to;
		}
	}

	static Joined placed(SetText text, double[] shifts, double[] shortened, List<Integer> loose,
			List<Integer> detached) {
		List<TextLine> lines = new ArrayList<>();
		double widest = text.setting().measure();
		for (TextLine line : text.lines()) {
			widest = Math.max(widest, line.width() + shortened[lines.size()]);
			lines.add(line);
		}
		for (int i = 0; i < shortened.length; i++) {
			TextLine line = lines.get(i);
			double width = line.width() + shortened[i];
			double left = TextSetter.left(text.setting().alignment(), widest, width);
			lines.set(i, new TextLine(line.start(), line.end(), left, width, line.baseline()));
		}
		List<Letter> moved = new ArrayList<>();
		List<Double> distances = new ArrayList<>();
		for (Letter letter : text.letters()) {
			double realigned = lines.get(letter.line()).left() - text.lines().get(letter.line()).left();
			double distance = shifts[moved.size()] + realigned;
			moved.add(letter.movedBy(distance, 0));
			distances.add(distance);
		}
		return new Joined(new SetText(text.text(), text.face(), text.setting(), moved, text.missing(), lines,
				text.spans()),
				distances, loose, detached);
	}
}
