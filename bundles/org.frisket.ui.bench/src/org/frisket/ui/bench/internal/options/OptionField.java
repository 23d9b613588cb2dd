package org.frisket.ui.bench.internal.options;

import java.util.List;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.ui.ThemeColour;

/** One option as a line of a form: what it does, its value, and below what is wrong with it. */
final class OptionField {

	private static final int LABEL_PX = 300;

	private final Option option;
	private final Control input;
	private final Label message;

	/** @param parent of two columns */
	OptionField(Composite parent, Option option, String value, Runnable changed) {
		this.option = option;
		Label label = new Label(parent, SWT.WRAP);
		label.setText(sentence(option.description()));
		// a long one is broken, or nothing would be left of the field beside it
		GridDataFactory.swtDefaults().hint(Math.min(LABEL_PX, label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x), SWT.DEFAULT)
				.applyTo(label);
		input = option.kind() == Option.Kind.CHOICE ? choice(parent, value) : text(parent, value);
		input.setData(option.name());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(input);
		message = new Label(parent, SWT.WRAP);
		message.setForeground(ThemeColour.FINDING_MESSAGE.colour());
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).exclude(true).applyTo(message);
		message.setVisible(false);
		input.addListener(SWT.Modify, event -> changed.run());
	}

	private static String sentence(String description) {
		return description.isEmpty() ? description
				: Character.toUpperCase(description.charAt(0)) + description.substring(1);
	}

	private Control choice(Composite parent, String value) {
		Combo combo = new Combo(parent, SWT.READ_ONLY);
		List<String> choices = option.choices();
		choices.forEach(word -> combo.add(ChoiceName.of(word)));
		combo.select(Math.max(0, choices.indexOf(value)));
		return combo;
	}

	private static Control text(Composite parent, String value) {
		Text text = new Text(parent, SWT.BORDER);
		text.setText(value);
		return text;
	}

	String name() {
		return option.name();
	}

	String value() {
		return input instanceof Combo combo ? option.choices().get(Math.max(0, combo.getSelectionIndex()))
				: ((Text) input).getText();
	}

	/** @param values by name; the option's own default if it is not among them */
	void fill(Map<String, String> values) {
		String value = values.getOrDefault(option.name(), option.initial());
		if (input instanceof Combo combo) {
			combo.select(Math.max(0, option.choices().indexOf(value)));
		} else {
			((Text) input).setText(value);
		}
	}

	/** Shows below the field what is wrong with its value. Whether nothing is. */
	boolean validate() {
		String wrong = wrong();
		message.setText(wrong);
		message.setVisible(!wrong.isEmpty());
		((GridData) message.getLayoutData()).exclude = wrong.isEmpty();
		return wrong.isEmpty();
	}

	private String wrong() {
		try {
			OptionValues.of(List.of(option), Map.of(option.name(), value()));
			return ""; //$NON-NLS-1$
		} catch (IllegalArgumentException e) {
			return e.getMessage();
		}
	}
}
