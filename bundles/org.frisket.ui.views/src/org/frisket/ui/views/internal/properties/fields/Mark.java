package org.frisket.ui.views.internal.properties.fields;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.ui.Icon;

/** Says under a field why what was typed there cannot be taken. Takes no room while there is nothing to say. */
final class Mark {

	private static final int LEAST_PX = 60;

	private final Composite line;
	private final Label reason;

	Mark(Composite row, Control field) {
		int columns = ((GridLayout) row.getLayout()).numColumns;
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(field);
		line = new Composite(row, SWT.NONE);
		line.setLayout(new GridLayout(2, false));
		Label icon = new Label(line, SWT.NONE);
		icon.setImage(new LocalResourceManager(JFaceResources.getResources(), line).create(Icon.BLOCKING.descriptor()));
		icon.setLayoutData(new GridData(SWT.LEFT, SWT.TOP, false, false));
		reason = new Label(line, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(reason);
		GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).exclude(true).applyTo(line);
		line.setVisible(false);
	}

	void show(String text) {
		reason.setText(text);
		setShown(true);
	}

	void clear() {
		if (line.getVisible()) {
			setShown(false);
		}
	}

	private void setShown(boolean shown) {
		line.setVisible(shown);
		((GridData) line.getLayoutData()).exclude = !shown;
		Form.layout(line);
	}
}
