package org.frisket.ui.bench.internal.typing;

import java.util.List;

import org.frisket.typography.VisualOrder;
import org.frisket.typography.face.Characters;

/** Moves a caret the way its key points, also where text is read from right to left. */
public final class VisualCaret {

	private VisualCaret() {
	}

	/** One character to the right or left; at the end of a line on to the next one, as it is read. */
	public static void move(TypedText text, boolean right) {
		String words = text.text();
		int caret = text.caret();
		int start = words.lastIndexOf('\n', caret - 1) + 1;
		int next = words.indexOf('\n', caret);
		int end = next < 0 ? words.length() : next;
		VisualOrder order = VisualOrder.of(words, start, end);
		if (!order.isTurned()) {
			step(text, right);
			return;
		}
		int moved = order.beside(caret, stops(words, start, end), right);
		if (moved != caret) {
			text.setCaret(moved);
			return;
		}
		boolean onward = right != order.runsToTheLeft();
		if (onward && next >= 0) {
			text.setCaret(end + 1);
		} else if (!onward && start > 0) {
			text.setCaret(start - 1);
		}
	}

	private static void step(TypedText text, boolean right) {
		if (right) {
			text.right();
		} else {
			text.left();
		}
	}

	/** What a reader takes for one character is passed at once. */
	private static List<Integer> stops(String words, int start, int end) {
		return Characters.stops(words.substring(start, end)).stream().map(stop -> start + stop).toList();
	}
}
