package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.MarginBorder;
import org.frisket.ui.ThemeColour;

/** A measure written on the thing itself while it is dragged. */
public final class TagFigure extends Label {

	private static final int SPACE_PX = 4;

	public TagFigure() {
		setOpaque(true);
		setBackgroundColor(ThemeColour.BENCH_TAG.colour());
		setForegroundColor(ThemeColour.BENCH_TAG_TEXT.colour());
		setBorder(new MarginBorder(SPACE_PX / 2, SPACE_PX, SPACE_PX / 2, SPACE_PX));
	}
}
