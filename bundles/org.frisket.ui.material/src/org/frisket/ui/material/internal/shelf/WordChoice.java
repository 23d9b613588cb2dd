package org.frisket.ui.material.internal.shelf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.frisket.material.StockField;

/** Lists whose items are shown in the user's language and stand for words as files have them. */
final class WordChoice {

	private static final String WORDS = WordChoice.class.getName();

	private WordChoice() {
	}

	/** @param none whether nothing can be chosen as well */
	static <E extends Enum<E>> Combo of(Composite parent, E[] values, Function<E, String> name, boolean none) {
		Combo combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
		List<String> words = new ArrayList<>();
		if (none) {
			combo.add(""); //$NON-NLS-1$
			words.add(""); //$NON-NLS-1$
		}
		Arrays.stream(values).forEach(value -> {
			combo.add(name.apply(value));
			words.add(StockField.wordOf(value));
		});
		combo.setData(WORDS, words);
		return combo;
	}

	@SuppressWarnings("unchecked")
	private static List<String> words(Combo combo) {
		return (List<String>) combo.getData(WORDS);
	}

	/** The word that is chosen, or what is written in a list without words of its own. */
	static String text(Combo combo) {
		if (words(combo) == null) {
			return combo.getText();
		}
		return combo.getSelectionIndex() < 0 ? "" : words(combo).get(combo.getSelectionIndex()); //$NON-NLS-1$
	}

	static void show(Combo combo, String text) {
		if (words(combo) == null) {
			combo.setText(text);
		} else {
			combo.select(words(combo).indexOf(text));
		}
	}
}
