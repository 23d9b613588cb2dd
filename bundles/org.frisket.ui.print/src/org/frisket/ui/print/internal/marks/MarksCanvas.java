package org.frisket.ui.print.internal.marks;

import java.util.function.IntConsumer;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.picture.Grey;
import org.frisket.ui.ThemeColour;

/** The picture of a sheet with its marks; a click on a mark chooses it. */
public final class MarksCanvas extends Canvas {

	private static final int REACH_PX = 8;
	private static final int SHADES = 256;
	private static final int BITS = 8;

	private final MarksPainter painter = new MarksPainter();
	private final IntConsumer chosen;
	private MarksPicture picture;
	private Image scan;
	private boolean scanShown;
	private int[] lit = {};

	/** @param chosen told of a mark, from 0 @param words what is seen, for who cannot see it */
	MarksCanvas(Composite parent, IntConsumer chosen, Supplier<String> words) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
		this.chosen = chosen;
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Resize, event -> redraw());
		addListener(SWT.MouseDown, this::pressed);
		addListener(SWT.KeyDown, event -> {
			// a control that listens to no key never gets the focus
		});
		addListener(SWT.Traverse, event -> event.doit = true);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		addListener(SWT.Dispose, event -> showScan(null));
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = words.get();
			}
		});
	}

	/** Null for none. */
	void show(MarksPicture shown) {
		picture = shown;
		redraw();
	}

	MarksPicture shown() {
		return picture;
	}

	/** Which marks are being measured, from 0. */
	void light(int... marks) {
		lit = marks.clone();
		redraw();
	}

	/** Which marks are lit, from 0. */
	public int[] lit() {
		return lit.clone();
	}

	/** A scan laid flat under the design; null for none. */
	void showScan(Grey flat) {
		if (scan != null) {
			scan.dispose();
			scan = null;
		}
		if (flat != null) {
			scan = new Image(getDisplay(), data(flat));
		}
		if (!isDisposed()) {
			redraw();
		}
	}

	boolean hasScan() {
		return scan != null;
	}

	void setScanShown(boolean shown) {
		scanShown = shown;
		redraw();
	}

	private static ImageData data(Grey grey) {
		RGB[] shades = new RGB[SHADES];
		for (int i = 0; i < SHADES; i++) {
			shades[i] = new RGB(i, i, i);
		}
		ImageData data = new ImageData(grey.width(), grey.height(), BITS, new PaletteData(shades));
		for (int y = 0; y < grey.height(); y++) {
			for (int x = 0; x < grey.width(); x++) {
				data.setPixel(x, y, grey.at(x, y));
			}
		}
		return data;
	}

	private void paint(GC gc) {
		Rectangle area = getClientArea();
		if (picture == null || area.width <= 0 || area.height <= 0) {
			gc.setBackground(ThemeColour.BENCH_DESK.colour());
			gc.fillRectangle(area);
			return;
		}
		painter.paint(gc, area, picture, lit, scanShown ? scan : null);
		if (isFocusControl()) {
			gc.setForeground(ThemeColour.BENCH_ACCENT.colour());
			gc.setLineWidth(2);
			gc.drawRectangle(1, 1, area.width - 2, area.height - 2);
			gc.setLineWidth(1);
		}
	}

	private void pressed(Event event) {
		setFocus();
		if (picture == null || event.button != 1) {
			return;
		}
		picture.plan().ifPresent(plan -> {
			int mark = at(plan, event.x, event.y);
			if (mark >= 0) {
				chosen.accept(mark);
			}
		});
	}

	private int at(MarkPlan plan, int x, int y) {
		org.frisket.geometry.Point mm = painter.frame().mm(x, y);
		for (int i = 0; i < plan.marks().size(); i++) {
			Mark mark = plan.marks().get(i);
			if (mark.bounds().grown(mark.design().quiet() + REACH_PX / painter.frame().scale()).contains(mm)) {
				return i;
			}
		}
		return -1;
	}

	/** Where a place of the sheet is seen, for what points at it. */
	public Point pixelOf(double x, double y) {
		return new Point(painter.frame().x(x), painter.frame().y(y));
	}
}
