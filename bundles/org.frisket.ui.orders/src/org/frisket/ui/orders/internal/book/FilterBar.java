package org.frisket.ui.orders.internal.book;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.frisket.orders.desk.BookChoice;
import org.frisket.orders.desk.BookGrouping;
import org.frisket.orders.desk.BookQuery;
import org.frisket.orders.desk.SavedFilter;
import org.frisket.ui.orders.internal.Named;

/** Where it is said which jobs are to be seen: words, a filter, groups. */
final class FilterBar {

	private static final int SPACE_PX = 4;
	private static final int FILTERS_PX = 220;
	private static final int GROUPS_PX = 190;

	private final Consumer<BookQuery> asked;
	private final Text words;
	private final Combo filters;
	private final Combo groups;
	private List<SavedFilter> saved = List.of();
	private BookQuery query;
	private boolean showing;

	/**
	 * @param asked told what is to be seen
	 * @param down  told of the keys that lead from the words to what was found; says whether there is somewhere to go
	 */
	FilterBar(Composite parent, BookQuery first, Consumer<BookQuery> asked, BooleanSupplier down) {
		this.asked = asked;
		query = first;
		Composite bar = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, 0).applyTo(bar);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
		words = new Text(bar, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		words.setMessage(Messages.FilterBar_words);
		Named.as(Messages.FilterBar_words, words);
		GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).applyTo(words);
		words.addListener(SWT.Modify, event -> ask(query.withText(words.getText())));
		words.addListener(SWT.KeyDown, event -> event.doit &= !leadsDown(event.keyCode) || !down.getAsBoolean());
		words.addListener(SWT.Traverse, event -> {
			if (event.detail == SWT.TRAVERSE_ESCAPE && !words.getText().isEmpty()) {
				event.doit = false;
				words.setText(""); //$NON-NLS-1$
			}
		});
		filters = combo(bar, FILTERS_PX, Messages.FilterBar_filter);
		filters.addListener(SWT.Selection, event -> choose());
		groups = combo(bar, GROUPS_PX, Messages.FilterBar_groups);
		for (BookGrouping each : BookGrouping.values()) {
			groups.add(BookText.of(each));
		}
		groups.addListener(SWT.Selection,
				event -> ask(query.withGrouping(BookGrouping.values()[groups.getSelectionIndex()])));
		show(first);
	}

	private static boolean leadsDown(int key) {
		return key == SWT.ARROW_DOWN || key == SWT.CR || key == SWT.KEYPAD_CR || key == SWT.PAGE_DOWN;
	}

	private static Combo combo(Composite bar, int width, String name) {
		Combo combo = new Combo(bar, SWT.READ_ONLY | SWT.DROP_DOWN);
		GridDataFactory.fillDefaults().hint(width, SWT.DEFAULT).applyTo(combo);
		combo.setToolTipText(name);
		Named.as(name, combo);
		return combo;
	}

	private void ask(BookQuery other) {
		if (!showing && !other.equals(query)) {
			query = other;
			show(other);
			asked.accept(other);
		}
	}

	private void choose() {
		int index = filters.getSelectionIndex();
		int own = index - BookChoice.values().length;
		ask(own >= 0 ? saved.get(own).query() : query.withChoice(BookChoice.values()[index]));
	}

	/** Shows what is asked for, without asking for it. */
	void show(BookQuery now) {
		query = now;
		showing = true;
		try {
			if (!words.getText().equals(now.text())) {
				words.setText(now.text());
				words.setSelection(now.text().length());
			}
			fill();
			groups.select(now.grouping().ordinal());
		} finally {
			showing = false;
		}
	}

	/** Shows the filters that the studio has named. */
	void show(List<SavedFilter> named) {
		saved = List.copyOf(named);
		showing = true;
		fill();
		showing = false;
	}

	private void fill() {
		String[] items = new String[BookChoice.values().length + saved.size()];
		int shown = query.choice().ordinal();
		for (int i = 0; i < items.length; i++) {
			int own = i - BookChoice.values().length;
			items[i] = own < 0 ? BookText.of(BookChoice.values()[i]) : saved.get(own).name();
			shown = own >= 0 && saved.get(own).query().equals(query) ? i : shown;
		}
		if (!List.of(filters.getItems()).equals(List.of(items))) {
			filters.setItems(items);
		}
		filters.select(shown);
	}

	/** The filter of the studio that is seen; empty if it is none, or was changed. */
	Optional<SavedFilter> shown() {
		int own = filters.getSelectionIndex() - BookChoice.values().length;
		return own < 0 ? Optional.empty() : Optional.of(saved.get(own));
	}

	/**
	 * Goes on with the words that are looked for.
	 *
	 * @param character 0 to begin anew
	 */
	void type(char character) {
		if (character == 0) {
			words.setText(""); //$NON-NLS-1$
			return;
		}
		words.setFocus();
		words.setText(words.getText() + character);
		words.setSelection(words.getText().length());
	}

	/** Goes where the words are typed that are looked for. */
	void find() {
		words.setFocus();
		words.selectAll();
	}

	Text words() {
		return words;
	}

	Combo filters() {
		return filters;
	}

	Combo groups() {
		return groups;
	}
}
