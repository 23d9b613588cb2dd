package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.OperationKind;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.CurvePath;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.figures.OperationStroke;
import org.frisket.ui.bench.internal.figures.ZoomedFigure;
import org.frisket.ui.bench.internal.looks.GraphicsInk;
import org.frisket.ui.bench.internal.looks.Ink;

/** A copy of a part on its sheet. Its paths are kept until the zoom or its place changes. */
final class PlacementFigure extends ZoomedFigure {

	private static final int EDGE_PX = 5;
	private static final int REACH_PX = 2;
	/** Below that nobody sees what is done on it. */
	private static final int PLAIN_PX = 10;
	private static final int PIN_PX = 4;

	private PartPicture picture;
	private Transform place = Transform.IDENTITY;
	private String colour;
	private boolean selected;
	private boolean pinned;
	/** Whether its print is seen below it. */
	private boolean bare;
	private boolean lined = true;
	private Path room;
	private final List<Path> lines = new ArrayList<>();

	PlacementFigure(CanvasZoom zoom) {
		super(zoom);
	}

	/** @param newPlace from about the part's centre to the surface @param newColour of the sheet */
	void show(PartPicture newPicture, Transform newPlace, String newColour, boolean isPinned) {
		boolean same = picture == newPicture && place.equals(newPlace);
		if (same && pinned == isPinned && Objects.equals(colour, newColour)) {
			return;
		}
		picture = newPicture;
		place = newPlace;
		colour = newColour;
		pinned = isPinned;
		if (!same) {
			zoomed();
		}
		repaint();
	}

	/** @param isBare whether only lines are drawn, for its print is seen below them @param isLined whether it is seen what is done on it */
	void show(boolean isBare, boolean isLined) {
		if (bare != isBare || lined != isLined) {
			bare = isBare;
			lined = isLined;
			repaint();
		}
	}

	PartPicture picture() {
		return picture;
	}

	Transform place() {
		return place;
	}

	void setSelected(boolean select) {
		if (selected != select) {
			selected = select;
			repaint();
		}
	}

	/** Around the part on the surface, in mm; not tight if it is turned. */
	Bounds box() {
		Bounds own = picture.shape().bounds();
		return Bounds.of(place.apply(new Point(own.minX(), own.minY())))
				.with(place.apply(new Point(own.maxX(), own.minY())))
				.with(place.apply(new Point(own.minX(), own.maxY())))
				.with(place.apply(new Point(own.maxX(), own.maxY())));
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return picture != null && getBounds().contains(x, y) && picture.shape().flat().touches(
				place.inverse().apply(new Point(Units.mm(x), Units.mm(y))), REACH_PX / zoom.pixelsPerMm());
	}

	@Override
	protected void zoomed() {
		forget();
		if (picture != null) {
			setBounds(Units.figure(box().grown(EDGE_PX / zoom.pixelsPerMm())));
		}
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		if (picture != null) {
			PixelSpace.paint(graphics, zoom.zoom(), () -> paintPixels(graphics));
		}
	}

	private void paintPixels(Graphics graphics) {
		Ink ink = new GraphicsInk(graphics);
		if (room == null) {
			room = path(picture.shape().curves());
			picture.lines().forEach(line -> lines.add(path(line.curves())));
		}
		if (!bare) {
			ink.fill(room, Paper.tint(colour));
		}
		double size = Math.max(box().width(), box().height()) * zoom.pixelsPerMm();
		if (!lined) {
			// the print alone is wanted
		} else if (size < PLAIN_PX) {
			ink.line(room, ThemeColour.OPERATION_CUT.colour(), 1, Ink.OPAQUE);
		} else {
			for (int i = 0; i < lines.size(); i++) {
				PartPicture.Line line = picture.lines().get(i);
				if (bare && line.kind() == OperationKind.PRINT) {
					continue;
				}
				if (line.dashed()) {
					OperationStroke.of(line.kind()).paintDashes(ink, lines.get(i));
				} else {
					OperationStroke.of(line.kind()).paint(ink, lines.get(i));
				}
			}
		}
		if (selected) {
			ink.line(room, ThemeColour.BENCH_SHEET.colour(), 5, 160);
			ink.line(room, ThemeColour.BENCH_SELECTION.colour(), 3, Ink.OPAQUE);
		}
		Point centre = place.apply(Point.ORIGIN);
		int x = (int) Math.round(centre.x() * zoom.pixelsPerMm());
		int y = (int) Math.round(centre.y() * zoom.pixelsPerMm());
		if (pinned) {
			pin(graphics, x, y);
		}
		mark(graphics, x, pinned ? y + 3 * PIN_PX : y);
	}

	/** Seen from above and a little from the side: a head, its rim, and the needle. */
	private void pin(Graphics graphics, int x, int y) {
		graphics.setLineWidth(2);
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.setBackgroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.fillOval(x - PIN_PX - 2, y - 3 * PIN_PX - 2, 2 * PIN_PX + 5, 2 * PIN_PX + 5);
		graphics.setForegroundColor(ThemeColour.BENCH_INK.colour());
		graphics.setBackgroundColor(ThemeColour.BENCH_ACCENT.colour());
		graphics.drawLine(x, y - PIN_PX, x, y + PIN_PX);
		graphics.setLineWidth(1);
		graphics.fillOval(x - PIN_PX, y - 3 * PIN_PX, 2 * PIN_PX + 1, 2 * PIN_PX + 1);
		graphics.drawOval(x - PIN_PX, y - 3 * PIN_PX, 2 * PIN_PX, 2 * PIN_PX);
	}

	private void mark(Graphics graphics, int x, int y) {
		if (picture.mark().isEmpty()) {
			return;
		}
		Dimension size = FigureUtilities.getTextExtents(picture.mark(), graphics.getFont());
		if (size.width <= box().width() * zoom.pixelsPerMm()) {
			graphics.setBackgroundColor(ThemeColour.BENCH_TAG.colour());
			graphics.setForegroundColor(ThemeColour.BENCH_TAG_TEXT.colour());
			graphics.fillRectangle(x - size.width / 2 - 2, y - size.height / 2, size.width + 4, size.height);
			graphics.drawText(picture.mark(), x - size.width / 2, y - size.height / 2);
		}
	}

	private Path path(Outline outline) {
		double scale = zoom.pixelsPerMm();
		return CurvePath.of(Display.getCurrent(), outline, place.then(Transform.scaling(scale, scale)));
	}

	private void forget() {
		if (room != null) {
			room.dispose();
			room = null;
		}
		lines.forEach(Path::dispose);
		lines.clear();
	}

	@Override
	public void addNotify() {
		super.addNotify();
		zoomed();
	}

	@Override
	public void removeNotify() {
		forget();
		super.removeNotify();
	}
}
