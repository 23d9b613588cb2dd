package org.frisket.ui.sheets.internal.sheets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** The sheets of a job, to lay parts on them by hand or by themselves. */
public final class SheetsView extends ViewPart {

	private Canvas canvas;

	@Override
	public void createPartControl(Composite parent) {
		canvas = new Canvas(parent, SWT.NONE);
	}

	@Override
	public void setFocus() {
		canvas.setFocus();
	}
}
