package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.List;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.model.Sheet;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.CurvePath;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.figures.SheetFigure;
import org.frisket.ui.bench.internal.looks.GraphicsInk;
import org.frisket.ui.bench.internal.looks.Ink;
import org.frisket.ui.bench.internal.parts.StockColour;

/** The desk with the sheets on it: paper in its true colour, margins, and what is written below. Parts are children. */
final class SheetsFigure extends FreeformLayer {

	private static final int SPACE_PX = 6;
	private static final int LEAST_CAPTION_PX = 40;
	private static final int HATCH_PX = 8;
	private static final int MARGIN_ALPHA = 120;
	private static final int OPAQUE = 255;
	private static final int[] MARGIN_DASH = { 4, 4 };
	private static final int[] SAFE_DASH = { 8, 4 };
	private static final int[] BORDER_DASH = { 2, 3 };

	private final CanvasZoom zoom;
	private final Board board;
	private Spread spread = new Spread(List.of());
	private Sheet current;
	private boolean offcutShown;
	private String hint = ""; //$NON-NLS-1$

	SheetsFigure(CanvasZoom zoom, Board board) {
		this.zoom = zoom;
		this.board = board;
		setLayoutManager(null);
	}

	void show(Spread newSpread, Sheet newCurrent) {
		spread = newSpread;
		current = newCurrent;
		fireExtentChanged();
		revalidate();
		repaint();
	}

	/** Whether the piece of the current sheet is seen that could be kept. */
	void setOffcutShown(boolean shown) {
		if (offcutShown != shown) {
			offcutShown = shown;
			repaint();
		}
	}

	/** What is said where there is no sheet. */
	void setHint(String text) {
		if (!hint.equals(text)) {
			hint = text;
			repaint();
		}
	}

	/** The sheets with quiet desk around them, so that they can be pushed about. */
	@Override
	public Rectangle getFreeformExtent() {
		Rectangle extent = super.getFreeformExtent().getCopy();
		Bounds all = spread.all();
		if (!all.isEmpty()) {
			extent.union(Units.figure(all.grown(Math.max(all.width(), all.height()))));
		}
		return extent;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		PixelSpace.paint(graphics, zoom.zoom(), () -> {
			spread.places().forEach((sheet, place) -> paint(graphics, sheet, place));
			if (!hint.isEmpty()) {
				Rectangle seen = seen();
				Dimension size = FigureUtilities.getTextExtents(hint, graphics.getFont());
				graphics.setForegroundColor(ThemeColour.BENCH_RULER_MARK.colour());
				org.frisket.geometry.Point middle = zoom.toMm(seen.width / 2.0, seen.height / 2.0);
				graphics.drawText(hint, (int) (middle.x() * zoom.pixelsPerMm()) - size.width / 2,
						(int) (middle.y() * zoom.pixelsPerMm()) - size.height / 2);
			}
		});
	}

	/** The window on the desk, in pixels of its own. */
	private Rectangle seen() {
		IFigure around = this;
		while (!(around instanceof Viewport)) {
			around = around.getParent();
		}
		return ((Viewport) around).getClientArea();
	}

	private void paint(Graphics graphics, Sheet sheet, Bounds place) {
		Rectangle paper = pixels(place);
		SheetFigure.paintPaper(graphics, paper, StockColour.of(board.colour(sheet)));
		if (sheet.getMargin() > 0) {
			graphics.setForegroundColor(Paper.ink(board.colour(sheet)));
			graphics.setAlpha(MARGIN_ALPHA);
			graphics.setLineWidth(1);
			graphics.setLineDash(MARGIN_DASH);
			graphics.drawRectangle(pixels(place.grown(-sheet.getMargin())));
			graphics.setLineStyle(SWT.LINE_SOLID);
			graphics.setAlpha(OPAQUE);
		}
		if (sheet == current) {
			board.prints().of(sheet, zoom.pixelsPerMm()).ifPresent(print -> paint(graphics, print, place, paper));
			graphics.setForegroundColor(ThemeColour.BENCH_ACCENT.colour());
			graphics.setLineWidth(2);
			graphics.drawRectangle(paper.getExpanded(2, 2));
			graphics.setLineWidth(1);
			if (offcutShown) {
				board.offcut(sheet).ifPresent(free -> hatch(graphics, pixels(new Bounds(place.minX() + free.minX(),
						place.minY() + free.minY(), place.minX() + free.maxX(), place.minY() + free.maxY()))));
			}
		}
		caption(graphics, sheet, paper);
	}

	private void paint(Graphics graphics, PrintLayer.Print print, Bounds place, Rectangle paper) {
		org.eclipse.swt.graphics.Rectangle all = print.image().getBounds();
		graphics.drawImage(print.image(), 0, 0, all.width, all.height, paper.x, paper.y, paper.width, paper.height);
		Ink ink = new GraphicsInk(graphics);
		Transform toPixels = Transform.translation(place.minX(), place.minY())
				.then(Transform.scaling(zoom.pixelsPerMm(), zoom.pixelsPerMm()));
		print.safe().forEach(line -> guide(ink, line, toPixels, SAFE_DASH));
		print.borders().forEach(line -> guide(ink, line, toPixels, BORDER_DASH));
	}

	private static void guide(Ink ink, Outline line, Transform toPixels, int... dash) {
		Path path = CurvePath.of(Display.getCurrent(), line, toPixels);
		ink.line(path, ThemeColour.BENCH_SHEET.colour(), 3, MARGIN_ALPHA);
		ink.line(path, ThemeColour.BENCH_GUIDE.colour(), 1, Ink.OPAQUE, dash);
		path.dispose();
	}

	private void caption(Graphics graphics, Sheet sheet, Rectangle paper) {
		graphics.setForegroundColor(ThemeColour.BENCH_RULER_MARK.colour());
		List<String> lines = board.caption(sheet);
		boolean narrow = FigureUtilities.getTextExtents(lines.get(0), graphics.getFont()).width > paper.width;
		int y = paper.bottom() + SPACE_PX;
		for (String line : narrow ? List.of(board.shortCaption(sheet)) : lines) {
			String text = Fitted.text(line, graphics.getFont(), Math.max(paper.width, LEAST_CAPTION_PX));
			Dimension size = FigureUtilities.getTextExtents(text, graphics.getFont());
			graphics.drawText(text, paper.x, y);
			y += size.height;
		}
	}

	private static void hatch(Graphics graphics, Rectangle box) {
		graphics.pushState();
		graphics.clipRect(box);
		graphics.setForegroundColor(ThemeColour.BENCH_ACCENT.colour());
		graphics.setLineWidth(1);
		for (int x = box.x - box.height; x < box.right(); x += HATCH_PX) {
			graphics.drawLine(x, box.bottom(), x + box.height, box.y);
		}
		graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
		graphics.popState();
	}

	private Rectangle pixels(Bounds mm) {
		double scale = zoom.pixelsPerMm();
		int x = (int) Math.round(mm.minX() * scale);
		int y = (int) Math.round(mm.minY() * scale);
		return new Rectangle(x, y, (int) Math.round(mm.maxX() * scale) - x, (int) Math.round(mm.maxY() * scale) - y);
	}
}
