package org.frisket.ui.bench.internal.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.model.TextChange;
import org.frisket.prepare.wording.LetterPlace;

/**
 * Which letters of a wording are chosen, by the index of their first characters; the last one leads and has the grips.
 */
public record LetterChoice(List<Integer> starts) {

	public static final LetterChoice NONE = new LetterChoice(List.of());

	public LetterChoice {
		starts = List.copyOf(starts);
	}

	public static LetterChoice of(LetterPlace letter) {
		return new LetterChoice(List.of(letter.start()));
	}

	/** All letters; the last of the text leads. */
	public static LetterChoice all(List<LetterPlace> letters) {
		return new LetterChoice(letters.stream().map(LetterPlace::start).toList());
	}

	public boolean contains(LetterPlace letter) {
		return starts.contains(letter.start());
	}

	/** With a letter that was not chosen as the last, or without one that was. */
	public LetterChoice toggled(LetterPlace letter) {
		List<Integer> others = new ArrayList<>(starts);
		if (!others.remove((Integer) letter.start())) {
			others.add(letter.start());
		}
		return new LetterChoice(others);
	}

	/** The chosen ones of these, in the order of the text. */
	public List<LetterPlace> of(List<LetterPlace> letters) {
		return letters.stream().filter(this::contains).toList();
	}

	/** The one with the grips. */
	public Optional<LetterPlace> lead(List<LetterPlace> letters) {
		return starts.isEmpty() ? Optional.empty()
				: letters.stream().filter(letter -> letter.start() == starts.get(starts.size() - 1)).findFirst();
	}

	/** Only the letter after the leading one, or before it; the first or last if none leads, and round at the ends. */
	public LetterChoice stepped(List<LetterPlace> letters, boolean forward) {
		if (letters.isEmpty()) {
			return NONE;
		}
		int at = lead(letters).map(letters::indexOf).orElse(forward ? -1 : letters.size());
		return of(letters.get(Math.floorMod(at + (forward ? 1 : -1), letters.size())));
	}

	/** The same letters in another text. */
	public LetterChoice follow(TextChange change) {
		return new LetterChoice(starts.stream().map(change::place).filter(at -> at >= 0).toList());
	}
}
