package org.frisket.ui.print.internal.output;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.frisket.geometry.Transform;
import org.frisket.print.output.WorkLine;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CurvePath;
import org.frisket.ui.bench.internal.figures.OperationStroke;
import org.frisket.ui.bench.internal.looks.GcInk;

/**
 * Shows a side of a sheet as large as there is room for it: the print, and over it what is worked, each if it is
 * wanted.
 */
final class FaceCanvas extends Canvas {

	private static final int MARGIN_PX = 16;
	private static final int SHADOW_PX = 3;

	private Face face;
	private Image image;
	private boolean printShown = true;
	private boolean workShown = true;
	private String hint = ""; //$NON-NLS-1$

	FaceCanvas(Composite parent) {
		super(parent, SWT.BORDER | SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		setData("face"); //$NON-NLS-1$
		setBackground(ThemeColour.BENCH_DESK.colour());
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Resize, event -> redraw());
		addListener(SWT.Dispose, event -> forget());
	}

	private void forget() {
		if (image != null) {
			image.dispose();
			image = null;
		}
	}

	/** @param newFace null for none yet */
	void show(Face newFace) {
		forget();
		face = newFace;
		if (face != null && face.print() != null) {
			image = new Image(getDisplay(), face.print());
		}
		redraw();
	}

	Face face() {
		return face;
	}

	/** What is said while there is nothing to see. */
	void setHint(String text) {
		hint = text;
		redraw();
	}

	void setPrintShown(boolean shown) {
		printShown = shown;
		redraw();
	}

	void setWorkShown(boolean shown) {
		workShown = shown;
		redraw();
	}

	/** Pixels in a mm of the sheet. */
	double scale() {
		Rectangle room = getClientArea();
		return Math.max(0.05, Math.min((room.width - 2 * MARGIN_PX) / face.width(), (room.height - 2 * MARGIN_PX) / face.height()));
	}

	/** Where the sheet is seen, in pixels. */
	Rectangle paper() {
		Rectangle room = getClientArea();
		int width = (int) Math.round(face.width() * scale());
		int height = (int) Math.round(face.height() * scale());
		return new Rectangle((room.width - width) / 2, (room.height - height) / 2, width, height);
	}

	private void paint(GC gc) {
		if (face == null) {
			Point size = gc.textExtent(hint);
			Rectangle room = getClientArea();
			gc.setForeground(ThemeColour.BENCH_HINT.colour());
			gc.drawText(hint, Math.max(MARGIN_PX, (room.width - size.x) / 2), (room.height - size.y) / 2, true);
			return;
		}
		gc.setAdvanced(true);
		gc.setAntialias(SWT.ON);
		gc.setInterpolation(SWT.HIGH);
		Rectangle paper = paper();
		gc.setBackground(ThemeColour.BENCH_SHEET_EDGE.colour());
		gc.fillRectangle(paper.x + SHADOW_PX, paper.y + SHADOW_PX, paper.width, paper.height);
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(paper);
		gc.setClipping(paper);
		if (printShown && image != null) {
			Rectangle all = image.getBounds();
			gc.drawImage(image, 0, 0, all.width, all.height, paper.x, paper.y, paper.width, paper.height);
		}
		if (workShown) {
			GcInk ink = new GcInk(gc, 1);
			Transform toPixels = Transform.scaling(scale(), scale()).then(Transform.translation(paper.x, paper.y));
			for (WorkLine line : face.work()) {
				Path path = CurvePath.of(getDisplay(), line.curves(), toPixels);
				if (line.dashed()) {
					OperationStroke.of(line.kind()).paintDashes(ink, path);
				} else {
					OperationStroke.of(line.kind()).paint(ink, path);
				}
				path.dispose();
			}
		}
	}
}
