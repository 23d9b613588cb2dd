package org.frisket.ui.views.internal.way;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.menus.WorkbenchWindowControlContribution;

/** Puts the way under the menu of a window. */
public final class WayContribution extends WorkbenchWindowControlContribution {

	@Override
	protected Control createControl(Composite parent) {
		return new WayStrip(parent);
	}
}
