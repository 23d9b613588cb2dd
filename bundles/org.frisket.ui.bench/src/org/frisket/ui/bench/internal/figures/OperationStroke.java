package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Path;
import org.frisket.model.OperationKind;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.OperationLook;

/**
 * The line of each operation, told apart by its pattern first and its hue second. Lines are as wide in pixels at every
 * zoom, and lie on a pale casing so that they stand out from any stock.
 */
public enum OperationStroke {

	CUT(ThemeColour.OPERATION_CUT, 1),
	KISS_CUT(ThemeColour.OPERATION_KISS_CUT, 1, 14, 4, 2, 4),
	CREASE(ThemeColour.OPERATION_CREASE, 1, 14, 6),
	PERFORATE(ThemeColour.OPERATION_PERFORATE, 2, 2, 4),
	DRAW(ThemeColour.OPERATION_DRAW, 3) {
		@Override
		void paint(Graphics graphics, Path path) {
			// two thin lines: a wide one with its middle taken out
			super.paint(graphics, path);
			stroke(graphics, path, ThemeColour.BENCH_SHEET, 1);
		}
	},
	PRINT(ThemeColour.OPERATION_PRINT, 1);

	private static final int OPAQUE = 255;
	private static final int CASING_ALPHA = 150;

	private final ThemeColour hue;
	private final int widthPx;
	private final int[] dash;

	OperationStroke(ThemeColour hue, int widthPx, int... dash) {
		this.hue = hue;
		this.widthPx = widthPx;
		this.dash = dash;
	}

	public static OperationStroke of(OperationKind kind) {
		return switch (kind) {
		case CUT -> CUT;
		case KISS_CUT -> KISS_CUT;
		case CREASE -> CREASE;
		case PERFORATE -> PERFORATE;
		case DRAW -> DRAW;
		case PRINT -> PRINT;
		};
	}

	/** The same line for those who do not paint on the bench. */
	public OperationLook look() {
		return new OperationLook(hue, widthPx, dash.length == 0 ? null : dash.clone(), this == DRAW);
	}

	/** Paints the line along a path in pixels. */
	void paint(Graphics graphics, Path path) {
		graphics.setAlpha(CASING_ALPHA);
		stroke(graphics, path, ThemeColour.BENCH_SHEET, widthPx + 2);
		graphics.setAlpha(OPAQUE);
		if (dash.length > 0) {
			graphics.setLineDash(dash);
		}
		stroke(graphics, path, hue, widthPx);
		graphics.setLineStyle(SWT.LINE_SOLID);
	}

	private static void stroke(Graphics graphics, Path path, ThemeColour colour, int widthPx) {
		graphics.setForegroundColor(colour.colour());
		graphics.setLineWidth(widthPx);
		graphics.setLineJoin(SWT.JOIN_ROUND);
		graphics.drawPath(path);
	}
}
