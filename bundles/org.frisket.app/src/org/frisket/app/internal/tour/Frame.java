package org.frisket.app.internal.tour;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.frisket.ui.ThemeColour;

/** A line around the thing that a step is about. */
final class Frame {

	private static final int WIDTH_PX = 3;

	private final Composite[] sides = new Composite[4];

	Frame(Shell window) {
		for (int i = 0; i < sides.length; i++) {
			sides[i] = new Composite(window, SWT.NO_FOCUS);
			sides[i].setBackground(ThemeColour.BENCH_ACCENT.colour());
		}
	}

	void placeAround(Rectangle thing) {
		sides[0].setBounds(thing.x, thing.y, thing.width, WIDTH_PX);
		sides[1].setBounds(thing.x, thing.y + thing.height - WIDTH_PX, thing.width, WIDTH_PX);
		sides[2].setBounds(thing.x, thing.y, WIDTH_PX, thing.height);
		sides[3].setBounds(thing.x + thing.width - WIDTH_PX, thing.y, WIDTH_PX, thing.height);
		for (Composite side : sides) {
			side.moveAbove(null);
		}
	}

	void dispose() {
		for (Composite side : sides) {
			side.dispose();
		}
	}
}
