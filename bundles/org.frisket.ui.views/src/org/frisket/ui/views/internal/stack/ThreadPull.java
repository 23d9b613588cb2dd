package org.frisket.ui.views.internal.stack;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.frisket.editing.shapes.ChangeMat;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.ui.LengthText;

/**
 * A mat's thread on the pointer: pulled down it lets the mat stand further out, pushed up nearer. The mat follows at
 * once, and letting go makes it one step. With Shift it moves finely; Escape gives up.
 */
final class ThreadPull {

	private static final double MM_PER_PIXEL = 0.1;
	private static final double FINE_MM_PER_PIXEL = 0.01;
	private static final double HUNDREDTHS = 100;

	private final StackCanvas canvas;
	private Mat mat;
	private double before;
	private Point at;
	private int pressedY;

	ThreadPull(StackCanvas canvas) {
		this.canvas = canvas;
		canvas.addListener(SWT.MouseMove, this::moved);
		canvas.addListener(SWT.MouseUp, event -> letGo());
	}

	/** Takes hold of the thread of a mat; one that is locked does not come along. */
	void press(Mat pulled, Event event) {
		if (!Jobs.isLocked(pulled)) {
			mat = pulled;
			before = pulled.getDistance();
			pressedY = event.y;
			at = new Point(event.x, event.y);
			canvas.redraw();
		}
	}

	/** The mat that is pulled; null if none is. */
	Mat mat() {
		return mat;
	}

	void cancel() {
		if (mat != null) {
			mat = null;
			canvas.bench().draft().drop();
			canvas.redraw();
		}
	}

	private void moved(Event event) {
		if (mat != null) {
			at = new Point(event.x, event.y);
			double step = (event.stateMask & SWT.SHIFT) != 0 ? FINE_MM_PER_PIXEL : MM_PER_PIXEL;
			double distance = Math.round((before + (event.y - pressedY) * step) / step) * step;
			Mat pulled = mat;
			canvas.bench().draft().show(() -> ChangeMat.distance(List.of(pulled), rounded(distance)));
			canvas.redraw();
		}
	}

	/** Without the crumbs of the multiplication, which would be written into the file. */
	private static double rounded(double mm) {
		return Math.round(mm * HUNDREDTHS) / HUNDREDTHS;
	}

	private void letGo() {
		if (mat != null) {
			mat = null;
			canvas.bench().draft().accept();
			canvas.redraw();
		}
	}

	void paint(StackPainter painter, int width) {
		if (mat != null) {
			painter.paintTag(NLS.bind(Messages.ThreadPull_step, LengthText.of(mat.getDistance())), at, width);
		}
	}
}
