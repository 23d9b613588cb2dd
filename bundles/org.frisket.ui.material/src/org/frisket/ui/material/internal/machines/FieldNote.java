package org.frisket.ui.material.internal.machines;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.ui.ThemeColour;

/** What is wrong with a field, in words below it; takes no room while nothing is. */
public final class FieldNote {

	/** Under which a field keeps its name. */
	public static final String NAME = "org.frisket.field"; //$NON-NLS-1$

	private static final int WIDTH_PX = 180;
	private final Label before;
	private final Label message;

	/** @param empty columns before it @param span columns that it takes */
	public FieldNote(Composite parent, int empty, int span) {
		before = new Label(parent, SWT.NONE);
		GridDataFactory.fillDefaults().span(empty, 1).exclude(true).applyTo(before);
		before.setVisible(false);
		message = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().span(span, 1).grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).exclude(true)
				.applyTo(message);
		message.setVisible(false);
	}

	/** @param wrong empty if nothing is */
	public void say(String wrong) {
		message.setForeground(ThemeColour.FINDING_MESSAGE.colour());
		message.setText(wrong.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		boolean shown = !wrong.isEmpty();
		show(before, shown);
		show(message, shown);
	}

	private static void show(Label label, boolean shown) {
		((GridData) label.getLayoutData()).exclude = !shown;
		label.setVisible(shown);
		label.requestLayout();
	}

	public String text() {
		return message.getText();
	}
}
