package org.frisket.ui.material.internal.shelf;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.ui.Icon;

/** A sentence about what went wrong. Takes no room while there is none. */
final class NoticeLine {

	private static final int LEAST_PX = 60;

	private final Composite line;
	private final Label words;

	NoticeLine(Composite parent) {
		this(parent, Icon.CAUTION, 1);
	}

	/** @param columns of the parent's grid that it takes */
	NoticeLine(Composite parent, Icon sign, int columns) {
		line = new Composite(parent, SWT.NONE);
		line.setLayout(new GridLayout(2, false));
		Label icon = new Label(line, SWT.NONE);
		icon.setImage(new LocalResourceManager(JFaceResources.getResources(), line).create(sign.descriptor()));
		icon.setLayoutData(new GridData(SWT.LEFT, SWT.TOP, false, false));
		words = new Label(line, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(words);
		GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).exclude(true).applyTo(line);
		line.setVisible(false);
	}

	void show(String text) {
		if (!text.equals(text())) {
			words.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			words.setToolTipText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			setShown(true);
		}
	}

	void clear() {
		if (line.getVisible()) {
			setShown(false);
		}
	}

	/** Empty while nothing is said. */
	String text() {
		return line.getVisible() ? words.getText().replace("&&", "&") : ""; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private void setShown(boolean shown) {
		line.setVisible(shown);
		((GridData) line.getLayoutData()).exclude = !shown;
		line.getParent().layout(true, true);
	}
}
