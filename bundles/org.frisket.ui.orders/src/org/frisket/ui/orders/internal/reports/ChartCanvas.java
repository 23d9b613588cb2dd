package org.frisket.ui.orders.internal.reports;

import java.io.IOException;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.frisket.page.bars.BarChart;
import org.frisket.page.bars.BarLayout;
import org.frisket.page.bars.Pattern;
import org.frisket.page.flow.Figures;
import org.frisket.ui.ThemeColour;

/** A chart of bars on the screen, laid out as on paper. As high as it has to be, at least as high as there is room. */
final class ChartCanvas extends Canvas {

	private static final int MARGIN_PX = 12;
	private static final int STEP_PX = 6;
	/** Of the ascent of a font, as much as capitals take; common practice, no source. */
	private static final double CAPITALS = 0.72;

	private final Font large;
	private BarChart chart;
	private int least;

	ChartCanvas(Composite parent) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
		FontData[] data = getFont().getFontData();
		for (FontData each : data) {
			each.setHeight(each.getHeight() + 4);
			each.setStyle(SWT.BOLD);
		}
		large = new Font(getDisplay(), data);
		addDisposeListener(event -> large.dispose());
		addPaintListener(this::paint);
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = spoken();
			}
		});
		getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = ACC.ROLE_GRAPHIC;
			}
		});
	}

	/** @param chart null for none */
	void show(BarChart chart) {
		this.chart = chart;
		redraw();
	}

	/** How high it is to be at least. */
	void room(int height) {
		least = height;
	}

	private String spoken() {
		return chart == null ? "" : chart.title() + ", " + chart.foot(); //$NON-NLS-1$ //$NON-NLS-2$
	}

	@Override
	public Point computeSize(int wide, int high, boolean changed) {
		int width = wide == SWT.DEFAULT ? 400 : wide;
		GC gc = new GC(this);
		try {
			int needed = layout(gc, width).map(layout -> (int) Math.ceil(layout.height()) + 2 * MARGIN_PX).orElse(0);
			return new Point(width, Math.max(needed, least));
		} finally {
			gc.dispose();
		}
	}

	/** Where all lies within the margins; empty without a chart. */
	private Optional<BarLayout> layout(GC gc, int width) {
		if (chart == null) {
			return Optional.empty();
		}
		try {
			double cap = gc.getFontMetrics().getAscent() * CAPITALS;
			return Optional.of(BarLayout.of(chart, Math.max(120, width - 2 * MARGIN_PX), least - 2 * MARGIN_PX, cap,
					(text, height) -> {
						gc.setFont(height > cap ? large : getFont());
						int wide = gc.textExtent(text).x;
						gc.setFont(getFont());
						return wide;
					}, Figures::number));
		} catch (IOException never) {
			// the screen's fonts are always there
			throw new IllegalStateException(never);
		}
	}

	private void paint(PaintEvent event) {
		GC gc = event.gc;
		Rectangle area = getClientArea();
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(area);
		layout(gc, area.width).ifPresent(layout -> {
			gc.setAntialias(SWT.ON);
			double cap = gc.getFontMetrics().getAscent() * CAPITALS;
			lines(gc, layout);
			boxes(gc, layout);
			gc.setForeground(ThemeColour.BENCH_INK.colour());
			for (BarLayout.Word word : layout.words()) {
				gc.setFont(word.capHeight() > cap ? large : getFont());
				gc.drawText(word.text(), MARGIN_PX + (int) Math.round(word.x()),
						MARGIN_PX + (int) Math.round(word.baseline()) - gc.getFontMetrics().getAscent(), true);
			}
		});
	}

	private static void lines(GC gc, BarLayout layout) {
		for (BarLayout.Line line : layout.lines()) {
			gc.setForeground((line.first() ? ThemeColour.BENCH_INK : ThemeColour.BENCH_GRID).colour());
			int x = MARGIN_PX + (int) Math.round(line.x());
			gc.drawLine(x, MARGIN_PX + (int) line.top(), x, MARGIN_PX + (int) line.bottom());
		}
	}

	private static void boxes(GC gc, BarLayout layout) {
		for (BarLayout.Box box : layout.boxes()) {
			int x = MARGIN_PX + (int) Math.round(box.x());
			int y = MARGIN_PX + (int) Math.round(box.y());
			int width = Math.max(1, MARGIN_PX + (int) Math.round(box.x() + box.width()) - x);
			int height = Math.max(1, MARGIN_PX + (int) Math.round(box.y() + box.height()) - y);
			// what lies behind must not be read as a part of the pattern
			gc.setBackground((box.pattern() == Pattern.SOLID ? ThemeColour.BENCH_ACCENT : ThemeColour.BENCH_SHEET)
			.colour());
			gc.fillRectangle(x, y, width, height);
			gc.setForeground(ThemeColour.BENCH_INK.colour());
			for (Pattern.Stroke stroke : box.pattern().strokes(x, y, width, height, STEP_PX)) {
				gc.drawLine((int) Math.round(stroke.x1()), (int) Math.round(stroke.y1()), (int) Math.round(stroke.x2()),
						(int) Math.round(stroke.y2()));
			}
			gc.drawRectangle(x, y, width, height);
		}
	}
}
