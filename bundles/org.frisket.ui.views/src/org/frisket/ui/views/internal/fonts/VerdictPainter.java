package org.frisket.ui.views.internal.fonts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.prepare.fonts.FontVerdict;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.views.internal.Shortened;

/** Paints what is said of a font: a sign and words, figures, and what it says of embedding and licence, each in a line. */
final class VerdictPainter {

	/** How many lines there are. */
	static final int LINES = 3;

	private static final int SPACE_PX = 4;
	private static final String PENDING = "\u2026"; //$NON-NLS-1$

	private VerdictPainter() {
	}

	/** In the foreground colour. @param verdict null while it is not known */
	static void paint(GC gc, FontVerdict verdict, Rectangle box, boolean isSelected) {
		int line = gc.getFontMetrics().getHeight();
		int y = box.y + (box.height - LINES * line) / 2;
		int left = box.x + line + SPACE_PX;
		int width = box.x + box.width - left;
		if (verdict == null) {
			gc.drawText(PENDING, left, y, true);
			return;
		}
		sign(gc, verdict.kind(), box.x, y, line, isSelected);
		gc.drawText(Shortened.of(gc, verdict.word(), width), left, y, true);
		gc.drawText(Shortened.of(gc, verdict.facts(), width), left, y + line, true);
		String small = verdict.licence().isEmpty() ? verdict.embedding()
				: verdict.embedding() + " \u00b7 " + verdict.licence(); //$NON-NLS-1$
		gc.drawText(Shortened.of(gc, small, width), left, y + 2 * line, true);
	}

	/** A tick, a triangle with a bar, a wave or a cross: told apart by shape, not by colour. */
	private static void sign(GC gc, FontVerdict.Kind kind, int x, int y, int size, boolean isSelected) {
		Color ink = gc.getForeground();
		gc.setAntialias(SWT.ON);
		gc.setLineWidth(2);
		int in = size / 5;
		int right = x + size - in;
		int bottom = y + size - in;
		int middle = x + size / 2;
		switch (kind) {
		case CUTS -> gc.drawPolyline(new int[] { x + in, y + size / 2, x + 2 * in, bottom, right, y + in });
		case CAUTION -> {
			if (!isSelected) {
				gc.setForeground(ThemeColour.FINDING_MESSAGE.colour());
			}
			gc.setLineWidth(1);
			gc.drawPolygon(new int[] { middle, y + 1, x + size - 1, bottom, x + 1, bottom });
			gc.drawLine(middle, y + 2 * in, middle, bottom - 2 * in);
			gc.drawLine(middle, bottom - in, middle, bottom - in + 1);
		}
		case DRAW_ONLY -> gc.drawPolyline(new int[] { x + in, bottom, x + 2 * in, y + in, x + 3 * in, bottom,
				right, y + in });
		case UNFIT -> {
			gc.drawLine(x + in, y + in, right, bottom);
			gc.drawLine(x + in, bottom, right, y + in);
		}
		}
		gc.setLineWidth(1);
		gc.setForeground(ink);
	}
}
