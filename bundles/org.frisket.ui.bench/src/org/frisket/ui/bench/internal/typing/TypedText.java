package org.frisket.ui.bench.internal.typing;

import java.util.List;
import java.util.function.Consumer;

import org.frisket.geometry.Point;
import org.frisket.typography.WordSteps;
import org.frisket.typography.face.Characters;

/**
 * A text with a caret in it, and perhaps some letters selected up to the caret. Lines are parted by line feeds; an index
 * counts UTF-16 characters.
 */
public final class TypedText {

	private static final int NOWHERE = -1;

	private final int longest;
	private String text;
	private int caret;
	/** Where the selection was begun; {@value #NOWHERE} if nothing is selected. */
	private int anchor = NOWHERE;

	/** @param longest the most characters that it may come to */
	public TypedText(String text, int longest) {
		this.text = text;
		this.longest = longest;
		caret = text.length();
	}

	public String text() {
		return text;
	}

	public int caret() {
		return caret;
	}

	public void setCaret(int index) {
		caret = Math.max(0, Math.min(text.length(), index));
	}

	/** Whether a letter is selected. */
	public boolean hasSelection() {
		return anchor != NOWHERE && anchor != caret;
	}

	/** Index of the first selected letter; the caret if none is. */
	public int selectionStart() {
		return hasSelection() ? Math.min(anchor, caret) : caret;
	}

	/** Index after the last selected letter; the caret if none is. */
	public int selectionEnd() {
		return hasSelection() ? Math.max(anchor, caret) : caret;
	}

	/** The selected letters; may be empty. */
	public String selected() {
		return text.substring(selectionStart(), selectionEnd());
	}

	/** Selects all from where the selection was begun, or the caret was, to where the caret is moved. */
	public void extend(Consumer<TypedText> move) {
		int from = anchor == NOWHERE ? caret : anchor;
		move.accept(this);
		anchor = from;
	}

	/** Selects nothing any more; the caret stays. */
	public void release() {
		anchor = NOWHERE;
	}

	public void selectAll() {
		anchor = 0;
		caret = text.length();
	}

	/** Selects the word or the gap that the caret stands in or before. */
	public void selectWord() {
		WordSteps.Part part = WordSteps.at(text, caret);
		if (part.end() > part.start()) {
			anchor = part.start();
			caret = part.end();
		}
	}

	/** @return whether letters were selected, which are gone now */
	public boolean deleteSelection() {
		if (!hasSelection()) {
			return false;
		}
		int from = selectionStart();
		text = text.substring(0, from) + text.substring(selectionEnd());
		caret = from;
		release();
		return true;
	}

	/**
	 * Puts characters in at the caret, or in place of what is selected, as far as a job can hold them: line ends become
	 * line feeds, tabs blanks, and other control characters are left out.
	 *
	 * @return whether all of it found room
	 */
	public boolean insert(String characters) {
		deleteSelection();
		String clean = clean(characters);
		int room = longest - text.length();
		boolean fits = clean.length() <= room;
		if (!fits) {
			boolean splitsPair = room > 0 && Character.isHighSurrogate(clean.charAt(room - 1));
			clean = clean.substring(0, splitsPair ? room - 1 : Math.max(0, room));
		}
		text = text.substring(0, caret) + clean + text.substring(caret);
		caret += clean.length();
		return fits;
	}

	private static String clean(String characters) {
		StringBuilder clean = new StringBuilder();
		characters.replace("\r\n", "\n").replace('\r', '\n').replace('\t', ' ').codePoints() //$NON-NLS-1$ //$NON-NLS-2$
				.filter(TypedText::isKept).forEach(clean::appendCodePoint);
		return clean.toString();
	}

	private static boolean isKept(int c) {
		boolean loneSurrogate = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
		return c == '\n' || !Character.isISOControl(c) && !loneSurrogate && c != 0xFFFE && c != 0xFFFF;
	}

	public void deleteBefore() {
		if (deleteSelection()) {
			return;
		}
		int from = Characters.before(text, caret);
		text = text.substring(0, from) + text.substring(caret);
		caret = from;
	}

	public void deleteAfter() {
		if (deleteSelection()) {
			return;
		}
		text = text.substring(0, caret) + text.substring(Characters.after(text, caret));
	}

	public void left() {
		caret = Characters.before(text, caret);
	}

	public void right() {
		caret = Characters.after(text, caret);
	}

	/** To the beginning of the word, or of the one before it. */
	public void wordLeft() {
		caret = WordSteps.before(text, caret);
	}

	/** Behind the end of the word, or of the next one. */
	public void wordRight() {
		caret = WordSteps.after(text, caret);
	}

	public void textStart() {
		caret = 0;
	}

	public void textEnd() {
		caret = text.length();
	}

	public void lineStart() {
		caret = text.lastIndexOf('\n', caret - 1) + 1;
	}

	public void lineEnd() {
		int end = text.indexOf('\n', caret);
		caret = end < 0 ? text.length() : end;
	}

	/** To the place of the line above that is nearest; to the start of the text from the first line. */
	public void up(List<Point> places) {
		int start = text.lastIndexOf('\n', caret - 1) + 1;
		if (start == 0) {
			caret = 0;
		} else {
			caret = nearest(places, text.lastIndexOf('\n', start - 2) + 1, start - 1);
		}
	}

	/** To the place of the line below that is nearest; to the end of the text from the last line. */
	public void down(List<Point> places) {
		int end = text.indexOf('\n', caret);
		if (end < 0) {
			caret = text.length();
		} else {
			int next = text.indexOf('\n', end + 1);
			caret = nearest(places, end + 1, next < 0 ? text.length() : next);
		}
	}

	private int nearest(List<Point> places, int from, int to) {
		if (places.size() <= Math.max(to, caret)) {
			return from;
		}
		int best = from;
		for (int i = from; i <= to; i++) {
			if (Math.abs(places.get(i).x() - places.get(caret).x()) < Math
					.abs(places.get(best).x() - places.get(caret).x())) {
				best = i;
			}
		}
		return best;
	}
}
