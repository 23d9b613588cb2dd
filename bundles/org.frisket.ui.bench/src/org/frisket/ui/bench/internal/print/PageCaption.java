package org.frisket.ui.bench.internal.print;

import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.model.OperationKind;
import org.frisket.prepare.layout.PageLayout;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.OperationName;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.figures.OperationStroke;
import org.frisket.ui.bench.internal.looks.BenchLook;
import org.frisket.ui.bench.internal.looks.Ink;

/**
 * What stands at the foot of each page: title and number of the job, a bar of known length, scale, unit, date and page,
 * and what the lines of the operations mean. All measures are in mm of paper.
 */
public final class PageCaption {

	private static final double FIRST_LINE = 2;
	private static final double LINE = 4.6;
	private static final double TEXT_POINTS = 8;
	private static final double MM_PER_INCH = 25.4;
	private static final double BAR_MM = 50;
	private static final double BAR_INCHES = 2;
	private static final int BAR_PARTS = 5;
	private static final double TICK = 1.2;
	private static final double GAP = 2;
	private static final double SAMPLE = 9;
	private static final String ELLIPSIS = "\u2026"; //$NON-NLS-1$

	private final PrintedJob job;
	private final PageLayout layout;
	private final BenchLook look;
	private final LocalDate date;

	public PageCaption(PrintedJob job, PageLayout layout, BenchLook look, LocalDate date) {
		this.job = job;
		this.layout = layout;
		this.look = look;
		this.date = date;
	}

	/** What stands in the first line. */
	public String heading() {
		return job.number().isEmpty() ? job.title() : NLS.bind(Messages.PageCaption_heading, job.title(), job.number());
	}

	/** What stands in the second line of a page. */
	public String details(int page) {
		List<String> parts = new ArrayList<>();
		parts.add(look.title());
		parts.add(layout.scale() == 1 ? Messages.PageCaption_trueSize
				: NLS.bind(Messages.PageCaption_scale, number(1 / layout.scale())));
		parts.add(NLS.bind(Messages.PageCaption_unit, LengthUnit.shown().symbol()));
		parts.add(date.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)));
		if (layout.pages() > 1) {
			parts.add(NLS.bind(Messages.PageCaption_page,
					new Object[] { page + 1, layout.pages(), layout.tile(page) }));
		}
		return String.join(" \u00b7 ", parts); //$NON-NLS-1$
	}

	private static String number(double value) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMaximumFractionDigits(2);
		return format.format(value);
	}

	void paint(GC gc, Ink ink, int page, Ground ground) {
		Bounds strip = layout.caption();
		double points = TEXT_POINTS * ground.scale() * MM_PER_INCH / gc.getDevice().getDPI().y;
		Font font = new Font(gc.getDevice(), gc.getFont().getFontData()[0].getName(),
				Math.max(1, (int) Math.round(points)), SWT.NORMAL);
		Font before = gc.getFont();
		gc.setFont(font);
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		double y = strip.minY() + FIRST_LINE;
		double barLeft = paintBar(gc, ink, strip.maxX(), y, ground);
		text(gc, heading(), strip.minX(), y, barLeft - GAP, ground);
		text(gc, details(page), strip.minX(), y + LINE, strip.maxX(), ground);
		if (look == BenchLook.OPERATIONS || look == BenchLook.PREVIEW) {
			paintOperations(gc, ink, strip, y + 2 * LINE, ground);
		}
		gc.setFont(before);
		font.dispose();
	}

	/** A bar that is so long on the job, with its length beside it; where it begins. */
	private double paintBar(GC gc, Ink ink, double right, double y, Ground ground) {
		boolean inches = LengthUnit.shown() == LengthUnit.INCH;
		double units = inches ? BAR_INCHES : BAR_MM;
		double length = LengthUnit.shown().toMillimetres(units) * layout.scale();
		String label = NLS.bind(Messages.PageCaption_bar, number(units), LengthUnit.shown().symbol());
		double labelWidth = gc.textExtent(label).x / ground.scale();
		text(gc, label, right - labelWidth, y, right, ground);
		double left = right - labelWidth - GAP - length;
		double middle = y + LINE / 2 - TICK / 2;
		Path path = new Path(gc.getDevice());
		line(path, left, middle, left + length, middle, ground);
		for (int i = 0; i <= BAR_PARTS; i++) {
			double x = left + length * i / BAR_PARTS;
			line(path, x, middle - TICK, x, middle + TICK, ground);
		}
		ink.line(path, ThemeColour.BENCH_INK.colour(), 1, Ink.OPAQUE);
		path.dispose();
		return left;
	}

	private void paintOperations(GC gc, Ink ink, Bounds strip, double y, Ground ground) {
		double x = strip.minX();
		for (OperationKind kind : job.operations()) {
			Path path = new Path(gc.getDevice());
			double middle = y + LINE / 2 - TICK / 2;
			if (kind == OperationKind.PRINT) {
				for (double left = x; left + 2 * TICK <= x + SAMPLE; left += TICK) {
					line(path, left, middle + TICK, left + 2 * TICK, middle - TICK, ground);
				}
			} else {
				line(path, x, middle, x + SAMPLE, middle, ground);
			}
			OperationStroke.of(kind).paint(ink, path);
			path.dispose();
			gc.setForeground(ThemeColour.BENCH_INK.colour());
			String name = OperationName.of(kind);
			text(gc, name, x + SAMPLE + GAP / 2, y, strip.maxX(), ground);
			x += SAMPLE + GAP / 2 + gc.textExtent(name).x / ground.scale() + 2 * GAP;
		}
	}

	private static void line(Path path, double x0, double y0, double x1, double y1, Ground ground) {
		ground.add(new Line(new Point(x0, y0), new Point(x1, y1)), path);
	}

	/** Shortened where it would not end before {@code right}. */
	private static void text(GC gc, String text, double x, double y, double right, Ground ground) {
		String shown = text;
		while (shown.length() > ELLIPSIS.length() && gc.textExtent(shown).x > (right - x) * ground.scale()) {
			shown = shown.substring(0, shown.length() - ELLIPSIS.length() - 1) + ELLIPSIS;
		}
		gc.drawText(shown, (int) Math.round(ground.x() + x * ground.scale()),
				(int) Math.round(ground.y() + y * ground.scale()), true);
	}
}
