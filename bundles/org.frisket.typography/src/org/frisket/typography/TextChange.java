package org.frisket.typography;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * From one version of a text to the next: which characters stayed, so that what hangs on them can follow. The longest
 * common subsequence is taken to have stayed; of several the leftmost.
 */
public final class TextChange {

	private static final int GONE = -1;
	/** Beyond this many comparisons, all between the common ends is taken for new. */
	private static final long MOST_COMPARISONS = 16_000_000;

	private final int[] places;
	private final int newLength;

	private TextChange(int[] places, int newLength) {
		this.places = places;
		this.newLength = newLength;
	}

	public static TextChange between(String before, String after) {
		int[] places = new int[before.length()];
		Arrays.fill(places, GONE);
		int shorter = Math.min(before.length(), after.length());
		int head = 0;
		while (head < shorter && before.charAt(head) == after.charAt(head)) {
			places[head] = head;
			head++;
		}
		int tail = 0;
		while (tail < shorter - head
				&& before.charAt(before.length() - 1 - tail) == after.charAt(after.length() - 1 - tail)) {
			tail++;
			places[before.length() - tail] = after.length() - tail;
		}
		String old = before.substring(head, before.length() - tail);
		String now = after.substring(head, after.length() - tail);
		if ((long) old.length() * now.length() <= MOST_COMPARISONS) {
			matchMiddle(old, now, head, places);
		}
		return new TextChange(places, after.length());
	}

	private static void matchMiddle(String old, String now, int head, int[] places) {
		int[][] common = new int[old.length() + 1][now.length() + 1];
		for (int i = old.length() - 1; i >= 0; i--) {
			for (int j = now.length() - 1; j >= 0; j--) {
				common[i][j] = old.charAt(i) == now.charAt(j) ? common[i + 1][j + 1] + 1
						: Math.max(common[i + 1][j], common[i][j + 1]);
			}
		}
		for (int i = 0, j = 0; i < old.length() && j < now.length();) {
			if (old.charAt(i) == now.charAt(j)) {
				places[head + i++] = head + j++;
			} else if (common[i + 1][j] >= common[i][j + 1]) {
				i++;
			} else {
				j++;
			}
		}
	}

	/** Where a character of the old text stands in the new one; -1 if it is gone. */
	public int place(int index) {
		return index < 0 || index >= places.length ? GONE : places[index];
	}

	/** Nudges of the new text: those of characters that stayed. */
	public List<Nudge> nudges(List<Nudge> before) {
		return before.stream().filter(n -> place(n.index()) != GONE).map(n -> n.at(place(n.index()))).toList();
	}

	/**
	 * Spans of the new text: those of which a character stayed. What was put into a span, or typed on at its end,
	 * belongs to it.
	 */
	public List<TextSpan> spans(List<TextSpan> before) {
		List<TextSpan> after = new ArrayList<>();
		for (TextSpan span : before) {
			int first = GONE;
			int last = GONE;
			for (int i = span.start(); i < Math.min(span.end(), places.length); i++) {
				if (places[i] != GONE) {
					first = first == GONE ? places[i] : first;
					last = places[i];
				}
			}
			if (first != GONE) {
				after.add(span.between(first, typedOn(span.end(), last + 1)));
			}
		}
		return after;
	}

	/** The end of a span together with what was typed on there, unless it took the place of something else. */
	private int typedOn(int oldEnd, int newEnd) {
		boolean lastStayed = place(oldEnd - 1) == newEnd - 1;
		if (!lastStayed) {
			return newEnd;
		}
		if (oldEnd >= places.length) {
			return newLength;
		}
		return places[oldEnd] == GONE ? newEnd : places[oldEnd];
	}
}
