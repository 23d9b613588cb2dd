package org.frisket.ui.views.internal.properties.fields;

import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** A field that is on or off. */
public final class Tick implements Field {

	private final Supplier<Boolean> source;
	private final Button button;

	/** @param source null where several elements differ */
	public Tick(Composite row, String label, Supplier<Boolean> source, Consumer<Boolean> sink) {
		this.source = source;
		button = new Button(row, SWT.CHECK);
		button.setText(label);
		button.setData(Form.NAME, label);
		Form.fill(button);
		button.addListener(SWT.Selection, event -> {
			sink.accept(button.getSelection());
			refresh();
		});
	}

	@Override
	public void refresh() {
		Boolean value = source.get();
		button.setGrayed(value == null);
		button.setSelection(value == null || value);
	}

	@Override
	public void reset() {
		refresh();
	}
}
