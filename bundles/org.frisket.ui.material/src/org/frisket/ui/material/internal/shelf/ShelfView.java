package org.frisket.ui.material.internal.shelf;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** The stock at hand. */
public final class ShelfView extends ViewPart {

	@Override
	public void createPartControl(Composite parent) {
	}

	@Override
	public void setFocus() {
	}
}
