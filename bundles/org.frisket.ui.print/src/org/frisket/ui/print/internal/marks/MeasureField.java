package org.frisket.ui.print.internal.marks;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.frisket.ui.views.internal.TextKeys;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/**
 * A field for one measured length, which may be empty. It is read when Enter or Tab leave it, or the pointer does; Escape brings
 * back what was there. A length that nobody has touched keeps digits that are not shown.
 */
final class MeasureField {

	private static final int WIDE_PX = 76;
	private static final int LONGEST = 60;

	/** What is told of a field. */
	interface Client {

		/** It has the focus. */
		void entered(MeasureField field);

		/** It is left, or Enter was pressed in it. */
		void left(MeasureField field);

		/** Enter was pressed: on to the next. */
		void next(MeasureField field);
	}

	private final Text text;
	private final LengthField form;
	private Optional<Double> kept = Optional.empty();

	/** @param name for who cannot see where it stands */
	MeasureField(Composite parent, LengthField form, TextKeys keys, String name, Client client) {
		this.form = form;
		text = new Text(parent, SWT.BORDER | SWT.SINGLE | SWT.RIGHT);
		text.setTextLimit(LONGEST);
		text.setData(name);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(WIDE_PX, SWT.DEFAULT).applyTo(text);
		text.addListener(SWT.FocusIn, event -> {
			keys.activate();
			text.selectAll();
			client.entered(this);
		});
		text.addListener(SWT.FocusOut, event -> {
			keys.deactivate();
			client.left(this);
		});
		text.addListener(SWT.DefaultSelection, event -> {
			client.left(this);
			client.next(this);
		});
		text.addListener(SWT.KeyDown, this::key);
		text.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = name;
			}
		});
	}

	private void key(Event event) {
		if (event.keyCode == SWT.ESC) {
			text.setText(shown(kept));
			text.selectAll();
			event.doit = false;
		}
	}

	Text text() {
		return text;
	}

	private static String shown(Optional<Double> mm) {
		return mm.map(LengthField::text).orElse(""); //$NON-NLS-1$
	}

	/** Whether something else stands in it than what was shown last. */
	boolean isTouched() {
		return !text.getText().equals(shown(kept));
	}

	/** Shows a length in mm. */
	void show(Optional<Double> mm) {
		kept = mm;
		String now = shown(mm);
		if (!now.equals(text.getText())) {
			text.setText(now);
		}
	}

	/** The length in mm; empty if nothing is typed. @throws IllegalArgumentException with the reason, for people */
	Optional<Double> value() {
		if (!isTouched()) {
			return kept;
		}
		String typed = text.getText();
		return typed.isBlank() ? Optional.empty() : Optional.of(form.parse(typed, kept.orElse(0.0)));
	}
}
