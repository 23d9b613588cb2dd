package org.frisket.ui.material.internal.trials;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.material.trials.CellPlace;
import org.frisket.material.trials.GoodWindow;
import org.frisket.material.trials.SheetLayout;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.Verdict;
import org.frisket.ui.LengthText;
import org.frisket.ui.ThemeColour;

/** Paints a test sheet: its card, its shapes and labels, the verdicts, the best window and the cell that is looked at. */
final class SheetPainter {

	/** Below the card stand its size and a scale. */
	static final int CAPTION_LINES = 3;
	private static final int MARGIN_PX = 16;
	private static final int CARD_MM = 3;
	private static final int SCALE_MM = 20;
	/** Of an enlarged sheet the shapes would say no more. */
	private static final double MOST_SCALE = 8;
	private static final double DEVIATION_MM = 0.05;
	private static final int PLATE_ALPHA = 205;
	private static final int WINDOW_ALPHA = 60;
	private static final int SIGN_MOST_PX = 14;

	private final SheetModel model;
	private double scale = 1;
	private double left;
	private double top;

	SheetPainter(SheetModel model) {
		this.model = model;
	}

	private void fit(Rectangle area, int captionPx) {
		SheetLayout layout = model.layout();
		double width = layout.width() + 2 * CARD_MM;
		double height = layout.height() + 2 * CARD_MM;
		scale = Math.max(0.1, Math.min(MOST_SCALE, Math.min((area.width - 2 * MARGIN_PX) / width,
				(area.height - 2 * MARGIN_PX - captionPx) / height)));
		left = (area.width - width * scale) / 2 + CARD_MM * scale;
		top = Math.max(MARGIN_PX, (area.height - captionPx - height * scale) / 2) + CARD_MM * scale;
	}

	/** Where a cell is seen. */
	Rectangle cell(CellPlace place, Rectangle area, int captionPx) {
		fit(area, captionPx);
		return pixels(model.layout().cell(place));
	}

	private Rectangle pixels(Bounds bounds) {
		int x = (int) Math.round(left + bounds.minX() * scale);
		int y = (int) Math.round(top + bounds.minY() * scale);
		return new Rectangle(x, y, (int) Math.round(left + bounds.maxX() * scale) - x,
				(int) Math.round(top + bounds.maxY() * scale) - y);
	}

	void paint(GC gc, Rectangle area, boolean hasFocus) {
		gc.setBackground(ThemeColour.BENCH_DESK.colour());
		gc.fillRectangle(area);
		if (model.sheet() == null) {
			return;
		}
		int line = gc.getFontMetrics().getHeight();
		fit(area, CAPTION_LINES * line);
		gc.setAntialias(SWT.ON);
		Rectangle card = pixels(new Bounds(-CARD_MM, -CARD_MM, model.layout().width() + CARD_MM,
				model.layout().height() + CARD_MM));
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(card);
		gc.setForeground(ThemeColour.BENCH_SHEET_EDGE.colour());
		gc.drawRectangle(card);
		Optional<GoodWindow> window = model.sheet().window();
		window.ifPresent(found -> paintWindow(gc, found));
		stroke(gc, model.labels(), ThemeColour.OPERATION_DRAW);
		for (CellPlace place : model.sheet().places()) {
			stroke(gc, model.layout().cut(place), ThemeColour.OPERATION_CUT);
			model.sheet().verdict(place).ifPresent(verdict -> paintVerdict(gc, place, verdict));
		}
		window.ifPresent(found -> paintAdvised(gc, found.centre()));
		if (model.isOpen()) {
			paintSelection(gc, hasFocus);
		}
		paintCaption(gc, area, card, line);
	}

	private void stroke(GC gc, Outline outline, ThemeColour colour) {
		Path path = new Path(gc.getDevice());
		for (Contour contour : outline.contours()) {
			boolean first = true;
			for (org.frisket.geometry.Point point : contour.flattened(DEVIATION_MM)) {
				float x = (float) (left + point.x() * scale);
				float y = (float) (top + point.y() * scale);
				if (first) {
					path.moveTo(x, y);
				} else {
					path.lineTo(x, y);
				}
				first = false;
			}
			if (contour.isClosed()) {
				path.close();
			}
		}
		gc.setForeground(colour.colour());
		gc.setLineWidth(1);
		gc.drawPath(path);
		path.dispose();
	}

	private void paintWindow(GC gc, GoodWindow window) {
		gc.setBackground(VerdictSign.colour(Verdict.THROUGH));
		gc.setAlpha(WINDOW_ALPHA);
		window.cells().forEach(place -> gc.fillRectangle(pixels(model.layout().cell(place))));
		gc.setAlpha(255);
	}

	private void paintVerdict(GC gc, CellPlace place, Verdict verdict) {
		Rectangle shapes = pixels(model.layout().shapes(place));
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.setAlpha(PLATE_ALPHA);
		gc.fillRectangle(shapes);
		gc.setAlpha(255);
		Point words = gc.textExtent(verdict.text());
		boolean fits = words.x <= shapes.width + 4 && words.y * 2 <= shapes.height;
		int room = fits ? shapes.height - words.y : shapes.height;
		float size = Math.max(3, Math.min(SIGN_MOST_PX, Math.min(room, shapes.width) * 0.36f));
		VerdictSign.paint(gc, verdict, shapes.x + shapes.width / 2f, shapes.y + room / 2f, size);
		if (fits) {
			gc.drawText(verdict.text(), shapes.x + (shapes.width - words.x) / 2, shapes.y + room, true);
		}
	}

	/** A double frame, for the heart of the window. */
	private void paintAdvised(GC gc, CellPlace place) {
		Rectangle cell = pixels(model.layout().cell(place));
		gc.setForeground(VerdictSign.colour(Verdict.THROUGH));
		gc.setLineWidth(1);
		gc.drawRectangle(cell.x + 2, cell.y + 2, cell.width - 4, cell.height - 4);
		gc.drawRectangle(cell.x + 5, cell.y + 5, cell.width - 10, cell.height - 10);
	}

	private void paintSelection(GC gc, boolean hasFocus) {
		Rectangle cell = pixels(model.layout().cell(model.at()));
		gc.setForeground(ThemeColour.BENCH_SELECTION.colour());
		gc.setLineStyle(hasFocus ? SWT.LINE_SOLID : SWT.LINE_DASH);
		gc.setLineWidth(2);
		gc.drawRectangle(cell);
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.setLineWidth(1);
	}

	private void paintCaption(GC gc, Rectangle area, Rectangle card, int line) {
		TestSheet sheet = model.sheet();
		String date = sheet.day().format(DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM));
		String words = NLS.bind(Messages.SheetPainter_caption, new Object[] {
				LengthText.size(model.layout().width(), model.layout().height()), model.isOpen() ? sheet.id() : "", date }) //$NON-NLS-1$
				.strip();
		gc.setForeground(ThemeColour.BENCH_RULER_MARK.colour());
		int y = card.y + card.height + line / 2;
		int x = Math.max(0, Math.min(card.x, area.width - gc.textExtent(words).x - line / 2));
		gc.drawText(words, x, y, true);
		int bar = (int) Math.round(SCALE_MM * scale);
		int below = y + line + line / 2;
		gc.drawLine(card.x, below, card.x + bar, below);
		gc.drawLine(card.x, below - 4, card.x, below + 4);
		gc.drawLine(card.x + bar, below - 4, card.x + bar, below + 4);
		gc.drawText(LengthText.of(SCALE_MM), card.x + bar + line / 2, y + line, true);
	}
}
