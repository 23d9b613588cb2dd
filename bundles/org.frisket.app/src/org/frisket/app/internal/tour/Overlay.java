package org.frisket.app.internal.tour;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.frisket.ui.ThemeColour;

/** A small box that lies over the parts of a window, moves with it, and leaves it usable. */
class Overlay extends Composite {

	private static final int MARGIN_PX = 12;
	private static final int SPACING_PX = 8;

	Overlay(Shell window, int columns) {
		super(window, SWT.NONE);
		GridLayout layout = new GridLayout(columns, false);
		layout.marginWidth = MARGIN_PX;
		layout.marginHeight = MARGIN_PX;
		layout.horizontalSpacing = SPACING_PX;
		layout.verticalSpacing = SPACING_PX;
		setLayout(layout);
		setBackground(ThemeColour.BENCH_TAG.colour());
		addListener(SWT.Paint, event -> {
			// an edge, without which it would be lost on a dark screen
			event.gc.setForeground(ThemeColour.BENCH_TAG_TEXT.colour());
			event.gc.drawRectangle(0, 0, getSize().x - 1, getSize().y - 1);
		});
	}

	Label label(String text, int style) {
		Label label = new Label(this, style);
		label.setText(text);
		label.setBackground(getBackground());
		label.setForeground(ThemeColour.BENCH_TAG_TEXT.colour());
		return label;
	}

	static Button button(Composite parent, String text, Runnable action) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	/** Lies at a place of the window, moved so that all of it is seen. */
	void place(int x, int y, int width) {
		Point size = computeSize(width, SWT.DEFAULT);
		Rectangle room = getShell().getClientArea();
		setBounds(Math.max(0, Math.min(x, room.width - size.x)), Math.max(0, Math.min(y, room.height - size.y)), size.x,
				size.y);
		layout(true, true);
		moveAbove(null);
	}
}
