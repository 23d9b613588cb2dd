package org.frisket.ui.orders.internal.docket;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.orders.paper.JobCode;
import org.frisket.ui.orders.internal.Named;

/** The code of a job, so that it can be scanned off the screen: black on white in any theme. */
final class CodeCanvas extends Canvas {

	private static final int MODULE_PX = 3;

	private final Outline modules;
	private final int side;

	CodeCanvas(Composite parent, String number) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		String text = JobCode.text(number);
		int inner = text.isEmpty() ? 0 : JobCode.size(text);
		// a module is a whole number of pixels, or a scanner would see a grey one
		modules = text.isEmpty() ? Outline.EMPTY
				: JobCode.modules(text, JobCode.QUIET * MODULE_PX, JobCode.QUIET * MODULE_PX, inner * MODULE_PX);
		side = text.isEmpty() ? 0 : (inner + 2 * JobCode.QUIET) * MODULE_PX;
		GridDataFactory.swtDefaults().align(SWT.END, SWT.TOP).hint(side, side).exclude(side == 0).applyTo(this);
		addListener(SWT.Paint, event -> paint(event.gc));
		Named.as(NLS.bind(Messages.CodeCanvas_name, number), this);
	}

	private void paint(GC gc) {
		gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_WHITE));
		gc.fillRectangle(0, 0, side, side);
		gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_BLACK));
		for (Contour run : modules.contours()) {
			Bounds box = run.bounds();
			gc.fillRectangle((int) Math.round(box.minX()), (int) Math.round(box.minY()), (int) Math.round(box.width()),
					(int) Math.round(box.height()));
		}
	}
}
