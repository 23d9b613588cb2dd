package org.frisket.ui.sheets.internal.run;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.frisket.model.OperationKind;
import org.frisket.toolpath.Stage;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.OperationLook;

/** Draws the lines of a stage by the pattern and hue of their operation. */
final class LinePen {

	static final int OPAQUE = 255;
	private static final int PALE = 100;
	private static final int THICKER_PX = 3;

	private LinePen() {
	}

	static OperationKind kind(Stage stage) {
		return OperationKind.valueOf(stage.name());
	}

	/** What is done. */
	static void solid(GC gc, Path path, Stage stage) {
		draw(gc, path, stage, OPAQUE, 0);
	}

	/** What is still to come. */
	static void pale(GC gc, Path path, Stage stage) {
		draw(gc, path, stage, PALE, 0);
	}

	/** What is under way. */
	static void thick(GC gc, Path path, Stage stage) {
		draw(gc, path, stage, OPAQUE, THICKER_PX);
	}

	private static void draw(GC gc, Path path, Stage stage, int alpha, int thicker) {
		OperationLook look = OperationLook.of(kind(stage));
		gc.setAntialias(SWT.ON);
		gc.setLineCap(SWT.CAP_FLAT);
		gc.setAlpha(alpha);
		gc.setForeground(look.hue().colour());
		gc.setLineWidth(look.widthPx() + thicker);
		if (look.dash() != null) {
			gc.setLineDash(look.dash());
		} else {
			gc.setLineStyle(SWT.LINE_SOLID);
		}
		gc.drawPath(path);
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.setAlpha(OPAQUE);
		if (look.isDouble()) {
			gc.setForeground(ThemeColour.BENCH_SHEET.colour());
			gc.setLineWidth(look.widthPx() + thicker - 2);
			gc.drawPath(path);
		}
		gc.setLineWidth(1);
	}
}
