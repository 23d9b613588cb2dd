package org.frisket.typography.internal.shape;

import java.lang.Character.UnicodeScript;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;

/** A stretch {@code [start, limit)} of a line, of one script and one direction. */
public record Run(int start, int limit, boolean rightToLeft) {

	/**
	 * The runs of one line in the order in which they stand from left to right. A line that holds no strong
	 * character runs to the right.
	 */
	public static List<Run> of(char[] line) {
		if (line.length == 0) {
			return List.of();
		}
		if (!Bidi.requiresBidi(line, 0, line.length)) {
			return byScript(line, 0, line.length, false);
		}
		Bidi bidi = new Bidi(line, 0, null, 0, line.length, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
		List<Run> runs = new ArrayList<>();
		List<Byte> levels = new ArrayList<>();
		for (int i = 0; i < bidi.getRunCount(); i++) {
			int level = bidi.getRunLevel(i);
			for (Run run : byScript(line, bidi.getRunStart(i), bidi.getRunLimit(i), level % 2 != 0)) {
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
	private static List<Run> byScript(char[] line, int start, int limit, boolean rightToLeft) {
		List<Run> runs = new ArrayList<>();
		UnicodeScript current = UnicodeScript.COMMON;
		int from = start;
		for (int i = start; i < limit;) {
			int codePoint = Character.codePointAt(line, i, limit);
			UnicodeScript script = UnicodeScript.of(codePoint);
			boolean own = script != UnicodeScript.COMMON && script != UnicodeScript.INHERITED
					&& script != UnicodeScript.UNKNOWN;
			if (own && script != current) {
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
