package org.frisket.ui.material.internal.machines;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.geometry.options.Option;
import org.frisket.ui.bench.internal.options.ChoiceName;

/** One option: label, field and unit in a row, and what is wrong below the field. */
final class OptionRow {

	private static final int LABEL_PX = 280;
	private static final int FIELD_PX = 150;

	private final Option option;
	private final OptionRows.Client client;
	private final Control field;
	private final FieldNote note;
	private String shown = ""; //$NON-NLS-1$

	/** @param parent of three columns */
	OptionRow(Composite parent, Option option, OptionRows.Client client) {
		this.option = option;
		this.client = client;
		Label label = new Label(parent, SWT.WRAP);
		label.setText(sentence(option.description()));
		GridDataFactory.swtDefaults().hint(LABEL_PX, SWT.DEFAULT).applyTo(label);
		field = option.kind() == Option.Kind.CHOICE ? choice(parent) : text(parent);
		field.setData(FieldNote.NAME, option.name());
		GridDataFactory.fillDefaults().hint(FIELD_PX, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(field);
		Label unit = new Label(parent, SWT.NONE);
		unit.setText(option.kind() == Option.Kind.NUMBER ? option.unit() : ""); //$NON-NLS-1$
		note = new FieldNote(parent, 1, 2);
	}

	private static String sentence(String description) {
		return description.isEmpty() ? description
				: Character.toUpperCase(description.charAt(0)) + description.substring(1);
	}

	private Control choice(Composite parent) {
		Combo combo = new Combo(parent, SWT.READ_ONLY);
		option.choices().forEach(word -> combo.add(ChoiceName.of(word)));
		combo.addListener(SWT.Selection, event -> {
			client.typed();
			client.taken();
		});
		return combo;
	}

	private Control text(Composite parent) {
		Text text = new Text(parent, SWT.BORDER);
		text.addListener(SWT.Modify, event -> client.typed());
		text.addListener(SWT.FocusOut, event -> client.taken());
		text.addListener(SWT.Traverse, this::traverse);
		return text;
	}

	/** Enter takes what was typed, Escape brings back what was there. */
	private void traverse(Event event) {
		if (event.detail == SWT.TRAVERSE_RETURN) {
			client.taken();
		} else if (event.detail == SWT.TRAVERSE_ESCAPE && isTyping()) {
			event.doit = false;
			show(shown);
			client.taken();
		}
	}

	Option option() {
		return option;
	}

	void show(String value) {
		shown = value;
		if (field instanceof Combo combo) {
			combo.select(Math.max(0, option.choices().indexOf(value)));
		} else if (!text().equals(value)) {
			((Text) field).setText(value);
		}
	}

	String text() {
		if (field instanceof Combo combo) {
			List<String> choices = option.choices();
			return choices.get(Math.max(0, combo.getSelectionIndex()));
		}
		return ((Text) field).getText();
	}

	boolean isTyping() {
		return field.isFocusControl() && !text().equals(shown);
	}

	void say(String wrong) {
		note.say(wrong);
	}

	void setReadOnly(boolean fixed) {
		if (field instanceof Text text) {
			text.setEditable(!fixed);
		} else {
			field.setEnabled(!fixed);
		}
	}
}
