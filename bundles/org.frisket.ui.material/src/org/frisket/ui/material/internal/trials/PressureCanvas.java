package org.frisket.ui.material.internal.trials;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.frisket.material.advice.Advice;
import org.frisket.material.advice.PressureChart;
import org.frisket.material.trials.Sweep;
import org.frisket.material.trials.Verdict;
import org.frisket.ui.ThemeColour;

/** The chart of what was tried and what is advised, on paper so that its hues are the same in every theme. */
public final class PressureCanvas extends Canvas {

	private static final int SIGN_PX = 5;
	private static final int TICK_PX = 4;
	private static final int BAND_PX = 10;
	private static final int BAND_ALPHA = 70;
	private PressureChart chart;
	private String empty = Messages.PressureCanvas_empty;

	PressureCanvas(Composite parent) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Resize, event -> redraw());
	}

	/** Null says why there is none. */
	void show(PressureChart shown) {
		chart = shown;
		empty = Messages.PressureCanvas_unknown;
		redraw();
	}

	/** What is shown; null for nothing. */
	public PressureChart chart() {
		return chart;
	}

	private void paint(GC gc) {
		Rectangle area = getClientArea();
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(area);
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		gc.setAntialias(SWT.ON);
		int line = gc.getFontMetrics().getHeight();
		if (chart == null) {
			TextLayout words = new TextLayout(getDisplay());
			words.setFont(getFont());
			words.setText(empty);
			words.setWidth(Math.max(1, area.width - 2 * line));
			words.draw(gc, line, line);
			words.dispose();
			return;
		}
		int left = line + gc.textExtent("0000.00").x; //$NON-NLS-1$
		Rectangle plot = new Rectangle(left, 2 * line, Math.max(1, area.width - left - 2 * line),
				Math.max(1, area.height - 3 * line - line / 2));
		paintAxes(gc, plot, line);
		paintAdvised(gc, plot, line);
		for (PressureChart.Mark mark : chart.marks()) {
			int x = x(plot, mark.pressure()) + mark.slot() * 2 * SIGN_PX;
			int y = y(plot, mark.stock());
			VerdictSign.paint(gc, mark.verdict(), x, y, SIGN_PX);
			if (mark.count() > 1) {
				gc.drawText(String.valueOf(mark.count()), x - SIGN_PX / 2, y + SIGN_PX, true);
			}
		}
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		String date = LocalDate.now().format(DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM));
		gc.drawText(NLS.bind(Messages.PressureCanvas_title, new Object[] { unit(chart.pressure().unit()),
				unit(chart.stock().unit()), date }), line / 2, line / 3, true);
	}

	private static String unit(String unit) {
		return unit.isEmpty() ? Messages.PressureCanvas_steps : unit;
	}

	private int x(Rectangle plot, double pressure) {
		double share = Math.max(0, Math.min(1, chart.pressure().share(pressure)));
		return plot.x + (int) Math.round(share * plot.width);
	}

	private int y(Rectangle plot, double stock) {
		return plot.y + plot.height - (int) Math.round(chart.stock().share(stock) * plot.height);
	}

	private void paintAxes(GC gc, Rectangle plot, int line) {
		gc.drawLine(plot.x, plot.y, plot.x, plot.y + plot.height);
		gc.drawLine(plot.x, plot.y + plot.height, plot.x + plot.width, plot.y + plot.height);
		for (double tick : chart.pressure().ticks()) {
			int x = x(plot, tick);
			gc.drawLine(x, plot.y + plot.height, x, plot.y + plot.height + TICK_PX);
			String text = Sweep.plain(tick);
			gc.drawText(text, x - gc.textExtent(text).x / 2, plot.y + plot.height + TICK_PX, true);
		}
		for (double tick : chart.stock().ticks()) {
			int y = y(plot, tick);
			gc.drawLine(plot.x - TICK_PX, y, plot.x, y);
			String text = Sweep.plain(tick);
			gc.drawText(text, plot.x - 2 * TICK_PX - gc.textExtent(text).x, y - line / 2, true);
		}
	}

	/** The window as a band, the interval of its lower end as a line with stops, the advised pressure as a diamond. */
	private void paintAdvised(GC gc, Rectangle plot, int line) {
		PressureChart.Advised advised = chart.advised();
		int y = y(plot, advised.stock());
		Advice.PressureWindow window = advised.window();
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		if (window != null) {
			int from = x(plot, window.from());
			int to = x(plot, window.to());
			if (window.isOpen()) {
				gc.setBackground(VerdictSign.colour(Verdict.THROUGH));
				gc.setAlpha(BAND_ALPHA);
				gc.fillRectangle(from, y - BAND_PX, Math.max(1, to - from), 2 * BAND_PX);
				gc.setAlpha(255);
			}
			paintInterval(gc, plot, window, y + BAND_PX + TICK_PX);
		}
		int x = x(plot, advised.pressure());
		gc.setBackground(ThemeColour.BENCH_INK.colour());
		int half = SIGN_PX + 2;
		gc.setLineWidth(2);
		gc.drawPolygon(new int[] { x, y - half, x + half, y, x, y + half, x - half, y });
		gc.setLineWidth(1);
		String text = NLS.bind(Messages.PressureCanvas_advised, Sweep.plain(advised.pressure()), chart.pressure().unit());
		gc.drawText(text, Math.min(x + half, plot.x + plot.width - gc.textExtent(text).x), y - BAND_PX - line, true);
	}

	/** Where the least pressure that comes through lies; an end that the trials do not bound has no stop. */
	private void paintInterval(GC gc, Rectangle plot, Advice.PressureWindow window, int y) {
		boolean bounded = Double.isFinite(window.fromLeast());
		boolean boundedAbove = Double.isFinite(window.fromMost());
		if (!bounded && !boundedAbove) {
			return;
		}
		int least = x(plot, window.fromLeast());
		int most = x(plot, window.fromMost());
		gc.drawLine(least, y, most, y);
		if (bounded) {
			gc.drawLine(least, y - TICK_PX, least, y + TICK_PX);
		}
		if (boundedAbove) {
			gc.drawLine(most, y - TICK_PX, most, y + TICK_PX);
		}
	}
}
