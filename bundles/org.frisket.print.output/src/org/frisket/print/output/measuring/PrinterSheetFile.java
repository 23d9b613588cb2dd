package org.frisket.print.output.measuring;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Length;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.page.PagePainter;
import org.frisket.page.PdfPages;
import org.frisket.print.measure.PrinterSheet;

/**
 * Writes the sheet that a printer is measured by, as PDF in its true size: the lines of a square, which cross at its corners, so
 * that a ruler is laid to crossings, with what each length is as designed.
 */
public final class PrinterSheetFile {

	private static final double LINE = 0.15;
	/** Lines go on beyond the corners. */
	private static final double BEYOND = 6;
	private static final double CAPITALS = 2.4;
	private static final double AWAY = 4;
	/** Letters at the diagonals stand this share of the side from their corner. */
	private static final double INSIDE = 0.12;

	private PrinterSheetFile() {
	}

	/** The same sheet gives the same bytes. */
	public static void write(PrinterSheet sheet, OutputStream out) throws IOException {
		String identity = "printer sheet " + sheet.width() + " " + sheet.height();
		try (PdfPages pages = new PdfPages(Messages.PrinterSheetFile_title, identity, Optional.empty())) {
			pages.add(sheet.width(), sheet.height(), painter -> paint(sheet, painter));
			pages.write(out);
		}
	}

	private static void paint(PrinterSheet sheet, PagePainter painter) throws IOException {
		Bounds square = sheet.square();
		double left = square.minX();
		double right = square.maxX();
		double top = square.minY();
		double bottom = square.maxY();
		// filled and not stroked, for renderers move thin strokes to whole pixels
		painter.fill(new Outline(List.of(line(left - BEYOND, top, right + BEYOND, top),
				line(left - BEYOND, bottom, right + BEYOND, bottom), line(left, top - BEYOND, left, bottom + BEYOND),
				line(right, top - BEYOND, right, bottom + BEYOND))), 0);
		String side = Length.text(sheet.side(), 2);
		String diagonal = Length.text(sheet.side() * Math.sqrt(2), 2);
		double half = sheet.side() / 2;
		double inside = INSIDE * sheet.side();
		words(painter, NLS.bind(Messages.PrinterSheetFile_across, side), left + half - inside, top - AWAY + 1, half);
		words(painter, NLS.bind(Messages.PrinterSheetFile_down, side), left + AWAY, top + half, half);
		words(painter, NLS.bind(Messages.PrinterSheetFile_falling, diagonal), left + inside, top + inside, half);
		words(painter, NLS.bind(Messages.PrinterSheetFile_rising, diagonal), left + inside, bottom - inside, half);
		double below = bottom + BEYOND + AWAY;
		double wide = right - left;
		words(painter, Messages.PrinterSheetFile_how, left, below, wide);
		words(painter, Messages.PrinterSheetFile_scale, left, below + AWAY, wide);
		words(painter, Messages.PrinterSheetFile_written, left, below + 2 * AWAY, wide);
	}

	/** Along x or along y. */
	private static Contour line(double x1, double y1, double x2, double y2) {
		double half = LINE / 2;
		double across = x1 == x2 ? half : 0;
		double down = half - across;
		return Contour.polygon(List.of(new Point(x1 - across, y1 - down), new Point(x1 - across, y2 + down),
				new Point(x2 + across, y2 + down), new Point(x2 + across, y1 - down)));
	}

	private static void words(PagePainter painter, String text, double x, double baseline, double room) throws IOException {
		painter.words(text, x, baseline, CAPITALS, room, 0);
	}
}
