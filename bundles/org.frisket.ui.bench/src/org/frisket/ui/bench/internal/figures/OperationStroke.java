package org.frisket.ui.bench.internal.figures;

import org.eclipse.swt.graphics.Path;
import org.frisket.model.OperationKind;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.OperationLook;
import org.frisket.ui.bench.internal.looks.Ink;

/**
 * The line of each operation, told apart by its pattern first and its hue second. Lines are as wide in pixels at every
 * zoom, and lie on a pale casing so that they stand out from any stock.
 */
public enum OperationStroke {

	CUT(ThemeColour.OPERATION_CUT, 1),
	KISS_CUT(ThemeColour.OPERATION_KISS_CUT, 1, 14, 4, 2, 4),
	CREASE(ThemeColour.OPERATION_CREASE, 1, 14, 6),
	PERFORATE(ThemeColour.OPERATION_PERFORATE, 2, 2, 4),
	DRAW(ThemeColour.OPERATION_DRAW, 4) {
		@Override
		public void paint(Ink ink, Path path) {
			// two thin lines: a wide one with its middle taken out
			super.paint(ink, path);
			ink.line(path, ThemeColour.BENCH_SHEET.colour(), 2, Ink.OPAQUE);
		}
	},
	PRINT(ThemeColour.OPERATION_PRINT, 1);

	private static final int CASING_ALPHA = 150;
	private static final int[] PLACEHOLDER_DASH = { 6, 3 };

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

	/** Whether the line has a pattern. */
	boolean isDashed() {
		return dash.length > 0;
	}

	/** Paints the line along a path. */
	public void paint(Ink ink, Path path) {
		ink.line(path, ThemeColour.BENCH_SHEET.colour(), widthPx + 2, CASING_ALPHA);
		ink.line(path, hue.colour(), widthPx, Ink.OPAQUE, dash);
	}

	/** Paints dashes that are worked as they are, so that no pattern breaks them further. */
	public void paintDashes(Ink ink, Path path) {
		ink.line(path, ThemeColour.BENCH_SHEET.colour(), widthPx + 2, CASING_ALPHA);
		ink.line(path, hue.colour(), widthPx, Ink.OPAQUE);
	}

	/** Paints the lines that stand for what could not be worked through: no operation's, and of the colour of trouble. */
	static void paintPlaceholder(Ink ink, Path path) {
		ink.line(path, ThemeColour.FINDING_BLOCKING.colour(), 1, Ink.OPAQUE, PLACEHOLDER_DASH);
	}
}
