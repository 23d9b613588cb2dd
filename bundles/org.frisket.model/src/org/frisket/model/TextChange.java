package org.frisket.model;

import java.util.Arrays;
import java.util.Optional;

/**
 * From one version of a text to the next: which characters stayed, so that what hangs on them can follow. Characters are
 * code points, so that half of one never stays alone; indices count UTF-16 as everywhere.
 */
public final class TextChange {

	/** A part of a text: from its first character to the place after its last one. */
	public record Part(int start, int end) {
	}

	private static final int GONE = -1;
	/** Beyond this many comparisons, all between the common ends is taken for new. */
	private static final long MOST_COMPARISONS = 16_000_000;

	/** For each UTF-16 character of the old text its place in the new one. */
	private final int[] places;
	private final int newLength;

	private TextChange(int[] places, int newLength) {
		this.places = places;
		this.newLength = newLength;
	}

	/**
	 * Where nothing is known but the texts: the longest common subsequence is taken to have stayed; of several the
	 * leftmost.
	 */
	public static TextChange between(String before, String after) {
		Characters old = Characters.of(before);
		Characters now = Characters.of(after);
		int shorter = Math.min(old.count(), now.count());
		int head = old.commonHead(now, shorter);
		int tail = old.commonTail(now, shorter - head);
		int[] stayed = new int[old.count()];
		Arrays.fill(stayed, GONE);
		int oldMiddle = old.count() - head - tail;
		int newMiddle = now.count() - head - tail;
		if ((long) oldMiddle * newMiddle <= MOST_COMPARISONS) {
			matchMiddle(old.codePoints(), now.codePoints(), head, oldMiddle, newMiddle, stayed);
		}
		return of(old, now, head, tail, stayed);
	}

	/**
	 * Where the change was one, and the caret stands after it: what follows the caret stayed. So of equal neighbours the
	 * right ones move, which the texts alone do not tell. A caret that this cannot be true of is not heeded.
	 *
	 * @param caret index in the text after the change
	 */
	public static TextChange typed(String before, String after, int caret) {
		int following = after.length() - caret;
		if (caret < 0 || following < 0 || following > before.length() || !before.endsWith(after.substring(caret))) {
			return between(before, after);
		}
		Characters old = Characters.of(before);
		Characters now = Characters.of(after);
		int tail = after.codePointCount(caret, after.length());
		int head = old.commonHead(now, Math.min(old.count(), now.count()) - tail);
		int[] stayed = new int[old.count()];
		Arrays.fill(stayed, GONE);
		return of(old, now, head, tail, stayed);
	}

	/** @param stayed for each character that is at neither end its number in the new text, or none */
	private static TextChange of(Characters old, Characters now, int head, int tail, int[] stayed) {
		int[] places = new int[old.starts()[old.count()]];
		for (int i = 0; i < old.count(); i++) {
			int number = i < head ? i : i >= old.count() - tail ? i + now.count() - old.count() : stayed[i];
			for (int at = old.starts()[i]; at < old.starts()[i + 1]; at++) {
				places[at] = number == GONE ? GONE : now.starts()[number] + at - old.starts()[i];
			}
		}
		return new TextChange(places, now.starts()[now.count()]);
	}

	private static void matchMiddle(int[] before, int[] after, int head, int olds, int news, int[] stayed) {
		int[][] common = new int[olds + 1][news + 1];
		for (int i = olds - 1; i >= 0; i--) {
			for (int j = news - 1; j >= 0; j--) {
				common[i][j] = before[head + i] == after[head + j] ? common[i + 1][j + 1] + 1
						: Math.max(common[i + 1][j], common[i][j + 1]);
			}
		}
		for (int i = 0, j = 0; i < olds && j < news;) {
			if (before[head + i] == after[head + j]) {
				stayed[head + i++] = head + j++;
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

	/**
	 * What became of a part; empty if no character of it stayed. What was put into it, or typed on at its end, belongs
	 * to it.
	 */
	public Optional<Part> part(int start, int end) {
		int first = GONE;
		int last = GONE;
		for (int i = Math.max(0, start); i < Math.min(end, places.length); i++) {
			if (places[i] != GONE) {
				first = first == GONE ? places[i] : first;
				last = places[i];
			}
		}
		return first == GONE ? Optional.empty() : Optional.of(new Part(first, typedOn(end, last + 1)));
	}

	/** The end of a part together with what was typed on there, unless it took the place of something else. */
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

	/**
	 * A text by its characters; half a surrogate pair alone counts as one.
	 *
	 * @param starts index of each in UTF-16, and the length of the text
	 */
	private record Characters(int[] codePoints, int[] starts) {

		static Characters of(String text) {
			int[] codePoints = text.codePoints().toArray();
			int[] starts = new int[codePoints.length + 1];
			for (int i = 0; i < codePoints.length; i++) {
				starts[i + 1] = starts[i] + Character.charCount(codePoints[i]);
			}
			return new Characters(codePoints, starts);
		}

		int count() {
			return codePoints.length;
		}

		int commonHead(Characters other, int most) {
			int head = 0;
			while (head < most && codePoints[head] == other.codePoints[head]) {
				head++;
			}
			return head;
		}

		int commonTail(Characters other, int most) {
			int tail = 0;
			while (tail < most && codePoints[count() - 1 - tail] == other.codePoints[other.count() - 1 - tail]) {
				tail++;
			}
			return tail;
		}
	}
}
