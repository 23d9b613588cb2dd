package org.frisket.ui.material.internal.machines;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A field of a calibration with its label before it and what is wrong with it behind. */
final class CalibrationRow {

	private static final int FIELD_PX = 90;
	private final Text text;
	private final FieldNote note;

	/** @param parent of three columns */
	CalibrationRow(Composite parent, String label, String name, String initial, Runnable typed) {
		new Label(parent, SWT.NONE).setText(label);
		text = new Text(parent, SWT.BORDER);
		text.setText(initial);
		text.setData(FieldNote.NAME, name);
		GridDataFactory.swtDefaults().hint(FIELD_PX, SWT.DEFAULT).applyTo(text);
		text.addListener(SWT.Modify, event -> typed.run());
		Composite cell = new Composite(parent, SWT.NONE);
		org.eclipse.jface.layout.GridLayoutFactory.fillDefaults().applyTo(cell);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(cell);
		note = new FieldNote(cell, 1, 1);
	}

	String text() {
		return text.getText();
	}

	void clear() {
		text.setText(""); //$NON-NLS-1$
	}

	void say(String wrong) {
		note.say(wrong);
	}
}
