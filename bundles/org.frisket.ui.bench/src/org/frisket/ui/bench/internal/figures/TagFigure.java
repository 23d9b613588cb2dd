package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.MarginBorder;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
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

	/** Shows it whole with its top left at a place, or as near to that as what is seen allows. */
	public void showAt(Point place, Rectangle seen) {
		Dimension size = getPreferredSize();
		int x = Math.max(seen.x, Math.min(place.x, seen.right() - size.width));
		int y = Math.max(seen.y, Math.min(place.y, seen.bottom() - size.height));
		setBounds(new Rectangle(new Point(x, y), size));
	}
}
