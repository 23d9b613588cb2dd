package org.frisket.ui.bench.internal.figures;

import java.util.Objects;

import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.swt.graphics.Color;
import org.frisket.geometry.Bounds;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.rulers.SheetGrid;

/** The bench with the sheet on it; the elements lie on the sheet as children. */
public final class SheetFigure extends FreeformLayer {

	private static final int SHADOW_PX = 12;
	private static final int SHADOW_ALPHA = 5;
	private static final int OPAQUE = 255;

	private final CanvasZoom zoom;
	private Bounds sheet = Bounds.EMPTY;
	private String hint = ""; //$NON-NLS-1$
	private Color ground;

	public SheetFigure(CanvasZoom zoom) {
		this.zoom = zoom;
		setLayoutManager(null);
	}

	/** Where the sheet lies, in mm. */
	public void setSheet(Bounds bounds) {
		if (!sheet.equals(bounds)) {
			sheet = bounds;
			fireExtentChanged();
			revalidate();
			repaint();
		}
	}

	public Bounds sheet() {
		return sheet;
	}

	/** The colour of the sheet; null for plain paper. */
	public void setGround(Color colour) {
		if (!Objects.equals(ground, colour)) {
			ground = colour;
			repaint();
		}
	}

	/** What an empty sheet says; empty for nothing. */
	public void setHint(String text) {
		if (!hint.equals(text)) {
			hint = text;
			repaint();
		}
	}

	/** The sheet with as much quiet bench around it as it is large, so that it can be pushed about. */
	@Override
	public Rectangle getFreeformExtent() {
		Rectangle extent = super.getFreeformExtent().getCopy();
		if (!sheet.isEmpty()) {
			extent.union(Units.figure(sheet.grown(Math.max(sheet.width(), sheet.height()))));
		}
		return extent;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		if (!sheet.isEmpty()) {
			PixelSpace.paint(graphics, zoom.zoom(), () -> paintSheet(graphics));
		}
	}

	private void paintSheet(Graphics graphics) {
		double scale = zoom.pixelsPerMm();
		int x = (int) Math.round(sheet.minX() * scale);
		int y = (int) Math.round(sheet.minY() * scale);
		Rectangle paper = new Rectangle(x, y, (int) Math.round(sheet.maxX() * scale) - x,
				(int) Math.round(sheet.maxY() * scale) - y);
		paintPaper(graphics, paper, ground);
		SheetGrid.paint(graphics, paper, scale);
		if (!hint.isEmpty()) {
			Dimension size = FigureUtilities.getTextExtents(hint, graphics.getFont());
			graphics.setForegroundColor(ThemeColour.BENCH_HINT.colour());
			graphics.drawText(hint, paper.getCenter().translate(-size.width / 2, -size.height / 2));
		}
	}

	/**
	 * Paints paper with its soft edge.
	 *
	 * @param paper  in pixels
	 * @param ground its colour; null for plain paper
	 */
	public static void paintPaper(Graphics graphics, Rectangle paper, Color ground) {
		if (!paper.contains(graphics.getClip(new Rectangle()))) {
			paintShadow(graphics, paper);
		}
		graphics.setBackgroundColor(ground != null ? ground : ThemeColour.BENCH_SHEET.colour());
		graphics.fillRectangle(paper);
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET_EDGE.colour());
		graphics.setLineWidth(1);
		graphics.drawRectangle(paper);
	}

	private static void paintShadow(Graphics graphics, Rectangle paper) {
		graphics.setBackgroundColor(ThemeColour.BENCH_SHADOW.colour());
		graphics.setAlpha(SHADOW_ALPHA);
		// many faint layers, closer together near the sheet, so that the shadow fades out; light comes from above
		for (int i = SHADOW_PX; i > 0; i--) {
			int reach = i * i / SHADOW_PX;
			graphics.fillRoundRectangle(paper.getExpanded(reach, reach).translate(0, 2), 2 * reach, 2 * reach);
		}
		graphics.setAlpha(OPAQUE);
	}
}
