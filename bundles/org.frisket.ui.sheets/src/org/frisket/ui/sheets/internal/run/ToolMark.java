package org.frisket.ui.sheets.internal.run;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.material.tools.ToolKind;
import org.frisket.ui.ThemeColour;

/**
 * The tool over the sheet: its tip points at where it is, its form says what it is, and its body is full while it is down
 * and hollow while it is lifted. Its name stands beside it.
 */
final class ToolMark {

	private static final int HALF_PX = 5;
	private static final int HIGH_PX = 14;
	private static final int LIFT_PX = 6;
	private static final int GAP_PX = 4;

	private ToolMark() {
	}

	/** What the mark covers at most. */
	static Rectangle bounds(GC gc, String name, int x, int y) {
		Point words = gc.textExtent(name);
		int width = HALF_PX + 3 * GAP_PX + words.x;
		return new Rectangle(x - HALF_PX - 2, y - HIGH_PX - LIFT_PX - words.y, width + HALF_PX + 4,
				HIGH_PX + LIFT_PX + words.y + 4);
	}

	static void paint(GC gc, ToolKind kind, String name, int x, int y, boolean down) {
		gc.setAntialias(SWT.ON);
		gc.setLineWidth(2);
		gc.setForeground(ThemeColour.BENCH_TAG.colour());
		gc.setBackground(down ? ThemeColour.BENCH_TAG.colour() : ThemeColour.BENCH_SHEET.colour());
		int tip = down ? y : y - LIFT_PX;
		int[] body = body(kind, x, tip);
		gc.fillPolygon(body);
		gc.drawPolygon(body);
		if (kind == ToolKind.CREASING_WHEEL) {
			gc.fillOval(x - HALF_PX, tip - 2 * HALF_PX, 2 * HALF_PX, 2 * HALF_PX);
			gc.drawOval(x - HALF_PX, tip - 2 * HALF_PX, 2 * HALF_PX, 2 * HALF_PX);
		}
		gc.setLineWidth(1);
		if (!down) {
			// a thread from the lifted tip to its place
			gc.drawLine(x, tip, x, y);
		}
		Point words = gc.textExtent(name);
		gc.setBackground(ThemeColour.BENCH_TAG.colour());
		gc.setForeground(ThemeColour.BENCH_TAG_TEXT.colour());
		int left = x + HALF_PX + GAP_PX;
		int top = tip - HIGH_PX - words.y / 2;
		gc.fillRectangle(left, top, words.x + 2 * GAP_PX, words.y);
		gc.drawText(name, left + GAP_PX, top, true);
	}

	private static int[] body(ToolKind kind, int x, int tip) {
		int top = tip - HIGH_PX;
		return switch (kind) {
		// ground on one side
		case BLADE -> new int[] { x, tip, x + HALF_PX, tip - HALF_PX - 2, x + HALF_PX, top, x - 1, top };
		// the same, with teeth
		case PERFORATING_BLADE -> new int[] { x, tip, x + 2, tip - 3, x + HALF_PX, tip - 3, x + HALF_PX, top, x - HALF_PX,
				top, x - HALF_PX, tip - 3, x - 2, tip - 3 };
		// a stem over the wheel
		case CREASING_WHEEL -> new int[] { x - 2, tip - HALF_PX, x + 2, tip - HALF_PX, x + 2, top, x - 2, top };
		case PEN -> new int[] { x, tip, x + HALF_PX - 1, tip - HALF_PX, x + HALF_PX - 1, top, x - HALF_PX + 1, top,
				x - HALF_PX + 1, tip - HALF_PX };
		};
	}
}
