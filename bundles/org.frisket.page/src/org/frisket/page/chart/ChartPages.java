package org.frisket.page.chart;

import java.io.IOException;
import java.io.OutputStream;
import java.text.NumberFormat;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.page.PagePainter;
import org.frisket.page.PdfPages;
import org.frisket.page.PicturePage;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;

/**
 * The pages of a chart: above, the font's name, scale, unit, page and a bar of known length; below, each glyph on the
 * baseline of its cell with what it is called. A glyph that is too large for its cell says by how much it is smaller.
 */
public final class ChartPages {

	/** Enough for labels to be read on the screen; lines of text stay below a megabyte a page. */
	public static final int DPI = 144;

	private static final double BLACK = 0;
	private static final double WORDS = 0.25;
	private static final double LINES = 0.75;
	private static final double TITLE_CAPITAL = 3.2;
	private static final double TEXT_CAPITAL = 2;
	private static final double LABEL_CAPITAL = 1.5;
	private static final double LABEL_SPACE = 1;
	private static final double TITLE_BASELINE = 4;
	private static final double DETAILS_BASELINE = 10;
	private static final double BAR_MM = 50;
	private static final double BAR_INCHES = 2;
	private static final double MM_PER_INCH = 25.4;
	private static final int BAR_PARTS = 5;
	private static final double BAR_WIDTH = 0.25;
	private static final double TICK = 1.2;
	private static final double NOT_REDUCED = 0.995;

	private final GlyphChart chart;
	private final List<GlyphEntry> entries;
	private final ChartSheet sheet;
	private final ChartLayout layout;

	/** @param entries of the chart, in the order in which they are shown */
	public ChartPages(GlyphChart chart, List<GlyphEntry> entries, ChartSheet sheet) {
		this.chart = chart;
		this.entries = List.copyOf(entries);
		this.sheet = sheet;
		layout = new ChartLayout(sheet.paper());
	}

	public String title() {
		return chart.face().fullName();
	}

	public int count() {
		return layout.pages(entries.size());
	}

	/** What stands in the second line of a page; pages count from 0. */
	public String details(int page) {
		List<String> parts = new ArrayList<>();
		parts.add(NLS.bind(Messages.ChartPages_glyphs, number(entries.size(), 0)));
		parts.add(NLS.bind(Messages.ChartPages_capitals, length(ChartLayout.CAPITAL)));
		sheet.date().ifPresent(
				date -> parts.add(date.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM))));
		parts.add(NLS.bind(Messages.ChartPages_page, page + 1, count()));
		return String.join(" · ", parts);
	}

	private String length(double mm) {
		return sheet.inches() ? NLS.bind(Messages.ChartPages_inch, number(mm / MM_PER_INCH, 3))
				: NLS.bind(Messages.ChartPages_millimetre, number(mm, 1));
	}

	private static String number(double value, int decimals) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMinimumFractionDigits(decimals);
		format.setMaximumFractionDigits(decimals);
		return format.format(value);
	}

	/** @param page from 0 */
	public void paint(int page, PagePainter painter) throws IOException {
		head(page, painter);
		int first = page * layout.perPage();
		int last = Math.min(entries.size(), first + layout.perPage());
		for (int i = first; i < last; i++) {
			cell(entries.get(i), layout.cell(i - first), painter);
		}
	}

	private void head(int page, PagePainter painter) throws IOException {
		double left = layout.left();
		double bar = sheet.inches() ? BAR_INCHES * MM_PER_INCH : BAR_MM;
		double barLeft = left + layout.width() - bar;
		double top = ChartLayout.MARGIN;
		painter.words(title(), left, top + TITLE_BASELINE, TITLE_CAPITAL, barLeft - left - 5, BLACK);
		painter.words(details(page), left, top + DETAILS_BASELINE, TEXT_CAPITAL, layout.width(), WORDS);
		painter.fill(rectangle(barLeft, top + TITLE_BASELINE - BAR_WIDTH, bar, BAR_WIDTH), BLACK);
		for (int i = 0; i <= BAR_PARTS; i++) {
			double at = barLeft + (bar - BAR_WIDTH) * i / BAR_PARTS;
			painter.fill(rectangle(at, top + TITLE_BASELINE - TICK, BAR_WIDTH, TICK), BLACK);
		}
		painter.words(sheet.inches() ? Messages.ChartPages_inchBar : Messages.ChartPages_millimetreBar, barLeft,
				top + TITLE_BASELINE - TICK - 0.6, LABEL_CAPITAL, bar, WORDS);
	}

	private static Outline rectangle(double x, double y, double width, double height) {
		return Outline.of(Contour.polygon(List.of(new Point(x, y), new Point(x, y + height),
				new Point(x + width, y + height), new Point(x + width, y))));
	}

	private void cell(GlyphEntry entry, Bounds cell, PagePainter painter) throws IOException {
		painter.frame(cell, LINES);
		Outline glyph = chart.outline(entry, 1);
		painter.fill(ChartLayout.placed(glyph, cell), BLACK);
		double room = cell.width() - 2 * LABEL_SPACE;
		double reduction = ChartLayout.reduction(glyph, cell);
		if (reduction < NOT_REDUCED) {
			painter.words(NLS.bind(Messages.ChartPages_smaller, number(reduction, 2)), cell.minX() + LABEL_SPACE,
					cell.minY() + LABEL_SPACE + LABEL_CAPITAL / 2, LABEL_CAPITAL / 2, room, WORDS);
		}
		painter.words(entry.label(), cell.minX() + LABEL_SPACE, cell.maxY() - LABEL_SPACE, LABEL_CAPITAL, room, WORDS);
	}

	/**
	 * All pages as one PDF document; the same chart makes the same bytes.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public void writePdf(OutputStream out, Monitor monitor) throws IOException {
		String identity = chart.face().digest() + " " + chart.face().index() + " " + title() + " " + sheet + " "
				+ entries.stream().mapToInt(GlyphEntry::glyph).boxed().toList().hashCode();
		try (PdfPages pages = new PdfPages(title(), identity, sheet.date())) {
			for (int i = 0; i < count(); i++) {
				monitor.check();
				int page = i;
				pages.add(sheet.paper(), painter -> paint(page, painter));
				monitor.worked((i + 1.0) / (count() + 1));
			}
			pages.write(out);
		}
	}

	/** One page as a PNG picture; pages count from 0. */
	public void writePng(int page, OutputStream out) throws IOException {
		try (PicturePage picture = new PicturePage(sheet.paper(), DPI)) {
			paint(page, picture);
			picture.write(out);
		}
	}
}
