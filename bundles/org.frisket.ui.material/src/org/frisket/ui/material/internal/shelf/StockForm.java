package org.frisket.ui.material.internal.shelf;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.Caliper;
import org.frisket.material.Finish;
import org.frisket.material.Grain;
import org.frisket.material.StockFamily;
import org.frisket.material.StockField;
import org.frisket.material.shelf.StockDraft;
import org.frisket.material.weights.Grade;
import org.frisket.ui.Icon;

/** The fields of a stock in two columns; what is wrong with one stands under it once it was touched. */
final class StockForm {

	private static final int MARGIN_PX = 12;
	private static final int SPACE_PX = 4;
	private static final int COLUMN_PX = 320;
	private static final int LEAST_PX = 60;
	/** Of a list whose items are told from each other by their ends. */
	private static final int WIDE_PX = 130;
	private static final int LINES = 3;
	private static final List<String> CURRENCIES = List.of("EUR", "GBP", "USD", "CHF", "DKK", "SEK", "NOK", "PLN", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$
			"CAD", "AUD"); //$NON-NLS-1$ //$NON-NLS-2$

	private final ScrolledComposite scroll;
	private final Composite body;
	private final Map<StockField, Control> controls = new EnumMap<>(StockField.class);
	private final Map<StockField, NoticeLine> notices = new EnumMap<>(StockField.class);
	private final Set<StockField> touched = EnumSet.noneOf(StockField.class);
	private final StockHints hints;
	private final Runnable changed;
	private StockDraft draft;
	private boolean showing;

	/** @param changed called when the draft says something else */
	StockForm(Composite parent, StockDraft draft, Runnable changed) {
		this.draft = draft;
		this.changed = changed;
		scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		scroll.setShowFocusedControl(true);
		body = new Composite(scroll, SWT.NONE);
		scroll.setContent(body);
		GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).margins(MARGIN_PX, MARGIN_PX)
				.spacing(4 * SPACE_PX, SPACE_PX).applyTo(body);
		Composite left = column();
		Composite right = column();
		text(left, StockField.NAME);
		text(left, StockField.DESCRIPTION);
		choice(left, StockField.FAMILY, StockFamily.values(), StockText::of);
		text(left, StockField.GRAMMAGE).setMessage(Messages.StockForm_grammage);
		Composite basis = pair(left, StockField.BASIS_WEIGHT, StockField.GRADE);
		pairedText(basis, StockField.BASIS_WEIGHT).setMessage(Messages.StockForm_pounds);
		pairedChoice(basis, StockField.GRADE, Grade.values(), StockText::of, true);
		notice(left, StockField.BASIS_WEIGHT);
		notice(left, StockField.GRADE);
		Composite caliper = pair(left, StockField.CALIPER, StockField.CALIPER_SOURCE);
		pairedText(caliper, StockField.CALIPER).setMessage(Messages.StockForm_caliper);
		pairedChoice(caliper, StockField.CALIPER_SOURCE, Caliper.Source.values(), StockText::of, false);
		notice(left, StockField.CALIPER);
		Label known = new Label(left, SWT.WRAP);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(COLUMN_PX, SWT.DEFAULT).applyTo(known);
		Composite colour = pair(left, StockField.COLOUR, StockField.COLOUR);
		pairedText(colour, StockField.COLOUR).setMessage(Messages.StockForm_colour);
		ColourButton swatch = new ColourButton(colour, () -> text(StockField.COLOUR), text -> put(StockField.COLOUR, text));
		notice(left, StockField.COLOUR);
		choice(left, StockField.FINISH, Finish.values(), StockText::of);
		choice(left, StockField.GRAIN, Grain.values(), StockText::of);
		Text id = text(left, StockField.ID);
		id.setMessage(Messages.StockForm_id);
		id.setToolTipText(Messages.StockForm_idTip);
		id.setEditable(draft.text(StockField.ID).isEmpty());
		Text sizes = lines(right, StockField.SIZES);
		new SizeMenu(right, size -> put(StockField.SIZES, sizes.getText().isBlank() ? size : sizes.getText().stripTrailing()
				+ '\n' + size));
		Composite price = pair(right, StockField.PRICE, StockField.CURRENCY);
		pairedText(price, StockField.PRICE).setMessage(Messages.StockForm_price);
		Combo currency = new Combo(price, SWT.DROP_DOWN);
		currency.setItems(CURRENCIES.toArray(String[]::new));
		fill(currency);
		bind(StockField.CURRENCY, currency);
		notice(right, StockField.PRICE);
		notice(right, StockField.CURRENCY);
		text(right, StockField.ON_HAND).setToolTipText(Messages.StockForm_onHand);
		text(right, StockField.LOW_WATER);
		text(right, StockField.ABRASION).setToolTipText(Messages.StockForm_abrasion);
		lines(right, StockField.NOTES);
		Label cautions = new Label(body, SWT.WRAP);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(2 * COLUMN_PX, SWT.DEFAULT).applyTo(cautions);
		hints = new StockHints(known, cautions, swatch);
		show();
		scroll.addListener(SWT.Resize, event -> fit());
	}

	Composite control() {
		return scroll;
	}

	private Composite column() {
		Composite column = new Composite(body, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(2 * SPACE_PX, SPACE_PX).applyTo(column);
		GridDataFactory.fillDefaults().grab(true, true).hint(COLUMN_PX, SWT.DEFAULT).applyTo(column);
		return column;
	}

	private static void label(Composite column, StockField field, boolean tall) {
		Label label = new Label(column, SWT.NONE);
		label.setText(FieldName.of(field));
		GridDataFactory.fillDefaults().align(SWT.FILL, tall ? SWT.TOP : SWT.CENTER).applyTo(label);
	}

	private static void fill(Control control) {
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(control);
	}

	private Text text(Composite column, StockField field) {
		label(column, field, false);
		Text text = pairedText(column, field);
		notice(column, field);
		return text;
	}

	private Text pairedText(Composite parent, StockField field) {
		Text text = new Text(parent, SWT.BORDER | SWT.SINGLE);
		fill(text);
		bind(field, text);
		return text;
	}

	private Text lines(Composite column, StockField field) {
		label(column, field, true);
		Text text = new Text(column, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
		GridDataFactory.fillDefaults().grab(true, field == StockField.NOTES)
				.hint(LEAST_PX, LINES * text.getLineHeight()).applyTo(text);
		text.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		bind(field, text);
		notice(column, field);
		return text;
	}

	private <E extends Enum<E>> void choice(Composite column, StockField field, E[] values, Function<E, String> name) {
		label(column, field, false);
		pairedChoice(column, field, values, name, false);
		notice(column, field);
	}

	private <E extends Enum<E>> void pairedChoice(Composite parent, StockField field, E[] values,
			Function<E, String> name, boolean none) {
		Combo combo = WordChoice.of(parent, values, name, none);
		GridDataFactory.fillDefaults().grab(true, false).hint(none ? WIDE_PX : LEAST_PX, SWT.DEFAULT).applyTo(combo);
		bind(field, combo);
	}

	/** A row with two fields beside each other under one name. */
	private Composite pair(Composite column, StockField first, StockField second) {
		label(column, first, false);
		Composite pair = new Composite(column, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACE_PX, 0).applyTo(pair);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(pair);
		return pair;
	}

	private void notice(Composite column, StockField field) {
		notices.put(field, new NoticeLine(column, Icon.BLOCKING, 2));
	}

	private void bind(StockField field, Control control) {
		controls.put(field, control);
		control.setData(StockField.class.getName(), field);
		control.addListener(SWT.Modify, event -> typed(field));
		control.addListener(SWT.Selection, event -> typed(field));
		control.addListener(SWT.FocusOut, event -> {
			if (!text(field).isEmpty()) {
				touch(field);
			}
		});
	}

	private String text(StockField field) {
		Control control = controls.get(field);
		if (control instanceof Combo combo) {
			return WordChoice.text(combo);
		}
		return ((Text) control).getText().replace("\r\n", "\n"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private void typed(StockField field) {
		if (!showing && !Objects.equals(draft.text(field), text(field))) {
			draft.set(field, text(field));
			refresh();
			changed.run();
		}
	}

	private void touch(StockField field) {
		if (touched.add(field) && !body.isDisposed()) {
			refresh();
		}
	}

	/** Puts a value into a field, as if it were typed. */
	void put(StockField field, String text) {
		touched.add(field);
		draft.set(field, text);
		show();
		changed.run();
	}

	/** Shows another draft. */
	void show(StockDraft other) {
		draft = other;
		show();
	}

	StockDraft draft() {
		return draft;
	}

	private void show() {
		showing = true;
		controls.forEach((field, control) -> {
			String text = draft.text(field);
			if (text(field).equals(text)) {
				return;
			}
			if (control instanceof Text line) {
				line.setText(text);
			} else if (control instanceof Combo combo) {
				WordChoice.show(combo, text);
			}
		});
		showing = false;
		refresh();
	}

	/** Names what is wrong with each field, touched or not. Answers whether nothing is. */
	boolean judge() {
		touched.addAll(EnumSet.allOf(StockField.class));
		Map<StockField, String> problems = refresh();
		controls.entrySet().stream().filter(entry -> problems.containsKey(entry.getKey())).findFirst()
				.ifPresent(entry -> entry.getValue().setFocus());
		return problems.isEmpty();
	}

	private Map<StockField, String> refresh() {
		Map<StockField, String> problems = draft.problems();
		notices.forEach((field, notice) -> {
			String problem = touched.contains(field) ? problems.get(field) : null;
			if (problem == null) {
				notice.clear();
			} else {
				notice.show(problem);
			}
		});
		hints.show(draft);
		fit();
		return problems;
	}

	private void fit() {
		body.layout(true, true);
		scroll.setMinHeight(body.computeSize(Math.max(1, scroll.getClientArea().width), SWT.DEFAULT).y);
	}

	Control field(StockField field) {
		return controls.get(field);
	}

	/** What is said under a field; empty if nothing is. */
	String problem(StockField field) {
		return notices.containsKey(field) ? notices.get(field).text() : ""; //$NON-NLS-1$
	}
}
