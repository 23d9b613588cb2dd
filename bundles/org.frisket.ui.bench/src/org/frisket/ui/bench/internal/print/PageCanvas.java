package org.frisket.ui.bench.internal.print;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.prepare.layout.PageSetup;
import org.frisket.ui.ThemeColour;

/** Shows one page as large as there is room for it; keys and the wheel turn the pages. */
public final class PageCanvas extends Canvas {

	private static final int MARGIN_PX = 16;
	private static final int SHADOW_PX = 3;

	private final Runnable turned;
	private PagePainter painter;
	private int page;

	/** @param turned called when another page is shown */
	PageCanvas(Composite parent, Runnable turned) {
		super(parent, SWT.BORDER | SWT.DOUBLE_BUFFERED);
		this.turned = turned;
		setBackground(ThemeColour.BENCH_DESK.colour());
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Resize, event -> redraw());
		addListener(SWT.KeyDown, this::key);
		addListener(SWT.MouseDown, event -> setFocus());
		addListener(SWT.MouseVerticalWheel, event -> turn(event.count < 0 ? 1 : -1));
		addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS || event.detail == SWT.TRAVERSE_ESCAPE
				|| event.detail == SWT.TRAVERSE_RETURN);
	}

	void setPainter(PagePainter newPainter) {
		painter = newPainter;
		show(page);
	}

	/** Paints the pages that are shown. */
	public PagePainter painter() {
		return painter;
	}

	/** From 0. */
	public int page() {
		return page;
	}

	int pages() {
		return painter.layout().pages();
	}

	/** Shows a page, or the nearest there is. */
	void show(int wanted) {
		page = Math.max(0, Math.min(pages() - 1, wanted));
		redraw();
		turned.run();
	}

	void turn(int pages) {
		show(page + pages);
	}

	private void key(Event event) {
		switch (event.keyCode) {
		case SWT.PAGE_DOWN, SWT.ARROW_RIGHT, SWT.ARROW_DOWN -> turn(1);
		case SWT.PAGE_UP, SWT.ARROW_LEFT, SWT.ARROW_UP -> turn(-1);
		case SWT.HOME -> show(0);
		case SWT.END -> show(Integer.MAX_VALUE);
		default -> {
			// not for the pages
		}
		}
	}

	/** Pixels in a millimetre of paper. */
	public double scale() {
		Rectangle room = getClientArea();
		PageSetup setup = painter.layout().setup();
		return Math.max(0.1, Math.min((room.width - 2 * MARGIN_PX) / setup.width(),
				(room.height - 2 * MARGIN_PX) / setup.height()));
	}

	/** Where the paper is seen, in pixels. */
	public Rectangle paper() {
		Rectangle room = getClientArea();
		int width = (int) Math.round(painter.layout().setup().width() * scale());
		int height = (int) Math.round(painter.layout().setup().height() * scale());
		return new Rectangle((room.width - width) / 2, (room.height - height) / 2, width, height);
	}

	private void paint(GC gc) {
		if (painter == null) {
			return;
		}
		Rectangle paper = paper();
		gc.setBackground(ThemeColour.BENCH_SHEET_EDGE.colour());
		gc.fillRectangle(paper.x + SHADOW_PX, paper.y + SHADOW_PX, paper.width, paper.height);
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(paper);
		gc.setClipping(paper);
		painter.paint(gc, page, new Ground(scale(), paper.x, paper.y));
	}
}
