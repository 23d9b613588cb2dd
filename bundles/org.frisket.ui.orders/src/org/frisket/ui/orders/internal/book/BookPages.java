package org.frisket.ui.orders.internal.book;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The table and the pages that are seen instead while it would be empty, one at a time. */
final class BookPages extends Composite {

	private final StackLayout layout = new StackLayout();
	private Control table;
	private EmptyBook empty;
	private EmptyBook nothing;

	BookPages(Composite parent) {
		super(parent, SWT.NONE);
		setLayout(layout);
	}

	/**
	 * What there is to be seen.
	 *
	 * @param noJobs    instead of the table while there is no job
	 * @param noneFound instead of it while none is what is looked for
	 */
	void fill(Control jobs, EmptyBook noJobs, EmptyBook noneFound) {
		table = jobs;
		empty = noJobs;
		nothing = noneFound;
	}

	/** @param isEmpty whether there is no job @param isNothing whether none is what is looked for */
	void show(boolean isEmpty, boolean isNothing) {
		show(isEmpty ? empty : isNothing ? nothing : table);
	}

	/** The focus goes along, if it was on the page before. */
	private void show(Control page) {
		if (layout.topControl != page) {
			boolean focus = layout.topControl != null && layout.topControl.isFocusControl();
			layout.topControl = page;
			layout(true);
			if (focus) {
				page.setFocus();
			}
		}
	}

	boolean isEmptyShown() {
		return layout.topControl == empty;
	}

	boolean isNothingShown() {
		return layout.topControl == nothing;
	}

	@Override
	public boolean setFocus() {
		return layout.topControl != null && layout.topControl.setFocus();
	}
}
