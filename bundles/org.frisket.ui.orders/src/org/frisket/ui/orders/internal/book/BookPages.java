package org.frisket.ui.orders.internal.book;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The table and the pages that are seen instead while it would be empty, one at a time. */
final class BookPages extends Composite {

	private final StackLayout layout = new StackLayout();

	BookPages(Composite parent) {
		super(parent, SWT.NONE);
		setLayout(layout);
	}

	/** The focus goes along, if it was on the page before. */
	void show(Control page) {
		if (!isShown(page)) {
			boolean focus = layout.topControl != null && layout.topControl.isFocusControl();
			layout.topControl = page;
			layout(true);
			if (focus) {
				page.setFocus();
			}
		}
	}

	boolean isShown(Control page) {
		return layout.topControl == page;
	}

	@Override
	public boolean setFocus() {
		return layout.topControl != null && layout.topControl.setFocus();
	}
}
