package org.frisket.ui.bench.internal.looks;

import org.eclipse.swt.graphics.Path;
import org.frisket.model.OperationKind;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.figures.OperationStroke;

/** A way of looking at a job. */
public enum BenchLook {

	/** As it will lie on the table: pieces in the colours of their stocks, with the lines of their operations. */
	PREVIEW(Messages.BenchLook_preview) {
		@Override
		public void paint(Shown shown, Ink ink) {
			if (shown.pixels() != null) {
				ink.pixels(shown.pixels());
				if (shown.picture().rim() != null) {
					rim(shown, ink);
				}
				return;
			}
			if (shown.picture().isPiece()) {
				ink.fill(shown.curves(), shown.stock());
			}
			OPERATIONS.paint(shown, ink);
		}
	},

	/** Thin contours only, so that each is seen through whatever lies above it. */
	OUTLINE(Messages.BenchLook_outline) {
		@Override
		public void paint(Shown shown, Ink ink) {
			ink.line(shown.closed(), ThemeColour.BENCH_INK.colour(), THIN, Ink.OPAQUE);
			if (shown.open() != null) {
				ink.line(shown.open(), ThemeColour.BENCH_INK.colour(), THIN, Ink.OPAQUE, OPEN_DASH);
			}
		}
	},

	/** The lines of the operations without the stocks. */
	OPERATIONS(Messages.BenchLook_operations) {
		@Override
		public void paint(Shown shown, Ink ink) {
			if (shown.picture().part()) {
				ink.line(shown.curves(), ThemeColour.BENCH_HINT.colour(), THIN, PART_ALPHA, PART_DASH);
			} else if (shown.picture().operations().contains(OperationKind.PRINT)) {
				OperationStroke.PRINT.paint(ink, shown.hatching());
			}
			shown.picture().strokes().forEach(kind -> stroke(shown, kind, ink));
		}
	},

	/** The curves as they were set or drawn, with what cleaning takes away. */
	BEFORE(Messages.BenchLook_before) {
		@Override
		public void paint(Shown shown, Ink ink) {
			if (shown.source() == null) {
				OUTLINE.paint(shown, ink);
				return;
			}
			ink.line(shown.source(), ThemeColour.BENCH_INK.colour(), THIN, Ink.OPAQUE);
			ink.line(shown.removed(), ThemeColour.BENCH_REMOVED.colour(), REMOVED_WIDTH, Ink.OPAQUE);
		}
	};

	/** Width of a contour that is shown for its shape alone. */
	static final int THIN = 1;
	static final int REMOVED_WIDTH = 3;
	static final int[] OPEN_DASH = { 7, 4 };
	/** Of what a combination is made of: there to be taken hold of, and no more. */
	static final int[] PART_DASH = { 1, 3 };
	/** Of where the print of a picture ends beyond its contour. */
	static final int[] BLEED_DASH = { 4, 4 };
	static final int PART_ALPHA = 190;

	private final String title;

	BenchLook(String title) {
		this.title = title;
	}

	private static void stroke(Shown shown, OperationKind kind, Ink ink) {
		Path dashes = shown.dashes(kind);
		if (dashes == null) {
			OperationStroke.of(kind).paint(ink, shown.curves());
		} else {
			OperationStroke.of(kind).paintDashes(ink, dashes);
		}
	}

	/** The contour of a picture as what is done along it, and how far its print goes on. */
	private static void rim(Shown shown, Ink ink) {
		ink.line(shown.curves(), ThemeColour.BENCH_HINT.colour(), THIN, PART_ALPHA, PART_DASH);
		shown.picture().strokes().stream().filter(kind -> kind != OperationKind.PRINT)
				.forEach(kind -> stroke(shown, kind, ink));
		if (shown.bleed() != null) {
			// on a dark mat the dashes alone would not be seen
			ink.line(shown.bleed(), ThemeColour.BENCH_SHEET.colour(), THIN, Ink.OPAQUE);
			ink.line(shown.bleed(), ThemeColour.BENCH_HINT.colour(), THIN, Ink.OPAQUE, BLEED_DASH);
		}
	}

	/** As menus and legends name it. */
	public String title() {
		return title;
	}

	/** Paints an element; those behind it have been painted before. */
	public abstract void paint(Shown shown, Ink ink);

	/** Whether pieces cover what lies behind them. */
	public boolean showsStock() {
		return this == PREVIEW;
	}
}
