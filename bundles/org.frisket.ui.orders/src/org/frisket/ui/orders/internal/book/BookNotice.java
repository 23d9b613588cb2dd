package org.frisket.ui.orders.internal.book;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A line that says why something was not done; it takes no room while there is nothing to say. */
final class BookNotice {

	private final Label label;

	/** @param area has a grid of one column */
	BookNotice(Composite area, int indent) {
		label = new Label(area, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).indent(indent, 0).exclude(true).applyTo(label);
	}

	/** @param message empty if all went well */
	void say(String message) {
		if (!label.isDisposed() && !message.equals(said())) {
			label.setText(message.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			label.setVisible(!message.isEmpty());
			((GridData) label.getLayoutData()).exclude = message.isEmpty();
			label.getParent().layout(true, true);
		}
	}

	String said() {
		return label.getText().replace("&&", "&"); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
