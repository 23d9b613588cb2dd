package org.frisket.typography;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.typography.internal.shape.Run;

import com.ibm.icu.text.Bidi;

/**
 * How the characters of one line stand from left to right, by the Unicode Bidirectional Algorithm (UAX #9) over their
 * whole paragraph. Indices are those of the whole text (UTF-16).
 */
public final class VisualOrder {

	private final int start;
	private final byte[] levels;
	private final Integer[] order;
	private final int[] placeOf;
	private final boolean runsToTheLeft;

	private VisualOrder(int start, byte[] levels, boolean runsToTheLeft) {
		this.start = start;
		this.levels = levels;
		this.runsToTheLeft = runsToTheLeft;
		order = new Integer[levels.length];
		for (int i = 0; i < order.length; i++) {
			order[i] = start + i;
		}
		if (order.length > 0) {
			Bidi.reorderVisually(levels, 0, order, 0, order.length);
		}
		placeOf = new int[order.length];
		for (int i = 0; i < order.length; i++) {
			placeOf[order[i] - start] = i;
		}
	}

	/** Of the line {@code [start, end)}, without its line end. */
	public static VisualOrder of(String text, int start, int end) {
		int from = start;
		while (from > 0 && !isParagraphEnd(text.charAt(from - 1))) {
			from--;
		}
		int to = end;
		while (to < text.length() && !isParagraphEnd(text.charAt(to))) {
			to++;
		}
		Bidi paragraph = Run.bidi(text.substring(from, to).toCharArray());
		byte[] levels = new byte[end - start];
		if (paragraph == null || start == end) {
			return new VisualOrder(start, levels, paragraph != null && !paragraph.baseIsLeftToRight());
		}
		Bidi line = paragraph.setLine(start - from, end - from);
		for (int i = 0; i < levels.length; i++) {
			levels[i] = (byte) line.getLevelAt(i);
		}
		return new VisualOrder(start, levels, !paragraph.baseIsLeftToRight());
	}

	private static boolean isParagraphEnd(char c) {
		return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
	}

	/** Whether the line as a whole begins at its right end. */
	public boolean runsToTheLeft() {
		return runsToTheLeft;
	}

	/** Whether any of it is read from right to left. */
	public boolean isTurned() {
		for (byte level : levels) {
			if (level % 2 != 0) {
				return true;
			}
		}
		return runsToTheLeft;
	}

	/** Whether a character is read from right to left. */
	public boolean isTurned(int index) {
		return levels[index - start] % 2 != 0;
	}

	/** The characters from left to right. */
	public List<Integer> fromLeft() {
		return List.of(order);
	}

	/**
	 * Where a caret stands, counted in characters from the left: where what is typed after the character before it will
	 * stand, and at the start of the line at the side where that begins.
	 */
	public int caret(int index) {
		if (index == start) {
			return levels.length == 0 ? 0 : runsToTheLeft ? levels.length : 0;
		}
		int before = index - 1 - start;
		return levels[before] % 2 == 0 ? placeOf[before] + 1 : placeOf[before];
	}

	/**
	 * The stop of a caret that is seen next to the right of one, or to the left; the same one at the end of the line. All
	 * are passed: where two stand at one place, which is where directions meet, one after the other.
	 *
	 * @param stops of the line, where a caret may stand
	 */
	public int beside(int caret, List<Integer> stops, boolean right) {
		List<Integer> seen = new ArrayList<>(stops);
		seen.sort(Comparator.<Integer>comparingInt(this::caret).thenComparingInt(stop -> stop));
		int at = seen.indexOf(caret) + (right ? 1 : -1);
		return seen.contains(caret) && at >= 0 && at < seen.size() ? seen.get(at) : caret;
	}
}
