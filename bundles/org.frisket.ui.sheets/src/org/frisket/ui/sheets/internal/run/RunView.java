package org.frisket.ui.sheets.internal.run;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** The run of a sheet, animated. */
public final class RunView extends ViewPart {

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
