package org.frisket.typography.internal.shape;

import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

import com.ibm.icu.text.Bidi;

/** A stretch {@code [start, limit)} of a line, of one script and one direction. */
public record Run(int start, int limit, boolean rightToLeft) {

	/** Before the block of Hebrew, all characters run to the right or either way. */
	private static final char FIRST_OF_THE_OTHERS = '\u0590';

	/**
	 * The runs of one line in the order in which they stand from left to right. A line that holds no strong
	 * character runs to the right.
	 */
	public static List<Run> of(char[] line) {
		return of(line, bidi(line), 0, line.length, cut -> false);
	}

	/** The levels of a paragraph by the Unicode Bidirectional Algorithm (UAX #9); null if it runs to the right. */
	public static Bidi bidi(char[] paragraph) {
		return mayRunToTheLeft(paragraph) && Bidi.requiresBidi(paragraph, 0, paragraph.length)
				? new Bidi(paragraph, 0, null, 0, paragraph.length, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT) : null;
	}

	/** Spares most texts the tables of the algorithm. */
	private static boolean mayRunToTheLeft(char[] paragraph) {
		for (char c : paragraph) {
			if (c >= FIRST_OF_THE_OTHERS) {
				return true;
			}
		}
		return false;
	}

	/**
	 * The runs of a line of a paragraph, from left to right.
	 *
	 * @param bidi of the paragraph, see {@link #bidi}
	 * @param cuts tells before which characters a run ends in any case
	 */
	public static List<Run> of(char[] paragraph, Bidi bidi, int from, int to, IntPredicate cuts) {
		if (from >= to) {
			return List.of();
		}
		if (bidi == null) {
			return byScript(paragraph, from, to, false, cuts);
		}
		Bidi line = bidi.createLineBidi(from, to);
		List<Run> runs = new ArrayList<>();
		List<Byte> levels = new ArrayList<>();
		for (int i = 0; i < line.getRunCount(); i++) {
			int level = line.getRunLevel(i);
			for (Run run : byScript(paragraph, from + line.getRunStart(i), from + line.getRunLimit(i), level % 2 != 0,
					cuts)) {
				runs.add(run);
				levels.add((byte) level);
			}
		}
		byte[] order = new byte[levels.size()];
		for (int i = 0; i < order.length; i++) {
			order[i] = levels.get(i);
		}
		Object[] visual = runs.toArray();
		Bidi.reorderVisually(order, 0, visual, 0, visual.length);
		return List.of(visual).stream().map(Run.class::cast).toList();
	}

	/** Characters of no script of their own (digits, stops, accents) stay with what stands before them. */
	private static List<Run> byScript(char[] line, int start, int limit, boolean rightToLeft,
			IntPredicate cuts) {
		List<Run> runs = new ArrayList<>();
		UnicodeScript current = UnicodeScript.COMMON;
		int from = start;
		for (int i = start; i < limit;) {
			int codePoint = Character.codePointAt(line, i, limit);
			UnicodeScript script = UnicodeScript.of(codePoint);
			boolean own = script != UnicodeScript.COMMON && script != UnicodeScript.INHERITED
					&& script != UnicodeScript.UNKNOWN;
			if (i > from && cuts.test(i)) {
				runs.add(new Run(from, i, rightToLeft));
				from = i;
				current = own ? script : UnicodeScript.COMMON;
			} else if (own && script != current) {
				if (current != UnicodeScript.COMMON) {
					runs.add(new Run(from, i, rightToLeft));
					from = i;
				}
				current = script;
			}
			i += Character.charCount(codePoint);
		}
		runs.add(new Run(from, limit, rightToLeft));
		return runs;
	}
}
