package org.frisket.ui.bench.internal.print;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.geometry.Line;
import org.frisket.geometry.Transform;
import org.frisket.prepare.layout.PageLayout;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.looks.BenchLook;
import org.frisket.ui.bench.internal.looks.GcInk;
import org.frisket.ui.bench.internal.looks.Ink;

/** Paints the pages of a job, on a printer as in the preview. */
public final class PagePainter {

	/** A pixel of the screen at 100 %, on paper: 96 to the inch. */
	private static final double PIXEL_MM = 25.4 / 96;

	private final PrintedJob job;
	private final PageLayout layout;
	private final BenchLook look;
	private final PageCaption caption;

	public PagePainter(PrintedJob job, PageLayout layout, BenchLook look, PageCaption caption) {
		this.job = job;
		this.layout = layout;
		this.look = look;
		this.caption = caption;
	}

	public PageLayout layout() {
		return layout;
	}

	String title() {
		return job.title();
	}

	/** Paints a page onto paper. */
	public void paint(GC gc, int page, Ground ground) {
		gc.setAdvanced(true);
		gc.setAntialias(SWT.ON);
		gc.setTextAntialias(SWT.ON);
		GcInk ink = new GcInk(gc, PIXEL_MM * ground.scale());
		Rectangle before = gc.getClipping();
		gc.setClipping(ground.around(layout.area()).intersection(before));
		Transform toUnits = layout.toPaper(page).then(ground.fromPaper());
		for (PrintedJob.PrintedElement element : job.elements()) {
			try (PaperShown shown = new PaperShown(gc.getDevice(), element, toUnits)) {
				look.paint(shown, ink);
			}
		}
		gc.setClipping(before);
		paintMarks(gc, ink, page, ground);
		caption.paint(gc, ink, page, ground);
	}

	private void paintMarks(GC gc, Ink ink, int page, Ground ground) {
		for (Line mark : layout.marks(page)) {
			Path path = new Path(gc.getDevice());
			ground.add(mark, path);
			ink.line(path, ThemeColour.BENCH_INK.colour(), 1, Ink.OPAQUE);
			path.dispose();
		}
	}
}
