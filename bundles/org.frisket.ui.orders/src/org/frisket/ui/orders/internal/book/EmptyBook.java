package org.frisket.ui.orders.internal.book;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A page in the place of the table: what there is to do while it would be empty. */
final class EmptyBook extends Composite {

	private static final int MARGIN_PX = 16;
	private static final int SPACE_PX = 8;
	private static final int WIDTH_PX = 240;

	private final Composite buttons;
	private Button first;

	EmptyBook(Composite parent, String words) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(SPACE_PX, SPACE_PX).applyTo(this);
		Label label = new Label(this, SWT.WRAP);
		label.setText(words);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).applyTo(label);
		buttons = new Composite(this, SWT.NONE);
		buttons.setLayout(new RowLayout(SWT.HORIZONTAL));
	}

	/** With a button that does something about it. */
	EmptyBook with(String text, Runnable action) {
		Button button = new Button(buttons, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		first = first == null ? button : first;
		return this;
	}

	@Override
	public boolean setFocus() {
		return first != null && first.setFocus();
	}
}
