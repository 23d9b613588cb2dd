package org.frisket.ui.bench.internal.letters;

import java.util.List;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.swt.SWT;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.figures.ZoomedFigure;

/**
 * Frames of letters: dotted around those near the pointer, whole around the chosen ones, with grips at the leading one,
 * square to scale and round to turn. As wide at every zoom.
 */
final class LettersFigure extends ZoomedFigure {

	private static final double NEAR_PX = 40;
	private static final int GRIP_PX = 4;
	private static final int EDGE_PX = 40;

	private LetterFrames frames;
	private Point pointer;

	private LettersFigure(CanvasZoom zoom) {
		super(zoom);
	}

	/** A new one over the elements of a viewer. */
	static LettersFigure over(EditPartViewer viewer, CanvasZoom zoom) {
		LettersFigure figure = new LettersFigure(zoom);
		LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.SCALED_FEEDBACK_LAYER).add(figure);
		return figure;
	}

	/** Takes it away again. */
	void remove() {
		if (getParent() != null) {
			getParent().remove(this);
		}
	}

	/** @param newPointer in mm of the job; null while it is not seen */
	void show(LetterFrames newFrames, Point newPointer) {
		frames = newFrames;
		pointer = newPointer;
		zoomed();
		repaint();
	}

	@Override
	protected void zoomed() {
		if (frames != null) {
			Bounds all = frames.letters().stream().map(frames::box).reduce(Bounds.EMPTY, Bounds::with);
			setBounds(all.isEmpty() ? new Rectangle() : Units.figure(all.grown(EDGE_PX / zoom.pixelsPerMm())));
		}
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		if (frames == null) {
			return;
		}
		PixelSpace.paint(graphics, zoom.zoom(), () -> {
			List<LetterPlace> near = pointer == null ? List.of() : frames.near(pointer, NEAR_PX);
			near.stream().filter(letter -> !frames.choice().contains(letter))
					.forEach(letter -> paintFrame(graphics, letter, SWT.LINE_DOT));
			frames.choice().of(frames.letters()).forEach(letter -> paintFrame(graphics, letter, SWT.LINE_SOLID));
			frames.choice().lead(frames.letters()).ifPresent(lead -> paintGrips(graphics, lead));
		});
	}

	private void paintFrame(Graphics graphics, LetterPlace letter, int style) {
		int[] corners = frames.corners(letter).stream().flatMapToInt(corner -> java.util.stream.IntStream.of(px(corner.x()),
				px(corner.y()))).toArray();
		graphics.setLineStyle(SWT.LINE_SOLID);
		graphics.setLineWidth(3);
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.drawPolygon(corners);
		graphics.setLineStyle(style);
		graphics.setLineWidth(1);
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.drawPolygon(corners);
		graphics.setLineStyle(SWT.LINE_SOLID);
	}

	private void paintGrips(Graphics graphics, LetterPlace lead) {
		graphics.setBackgroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		Rectangle scale = around(frames.scaleGrip().orElseThrow());
		graphics.fillRectangle(scale);
		graphics.drawRectangle(scale);
		Rectangle turn = around(frames.turnGrip().orElseThrow());
		graphics.fillOval(turn);
		graphics.drawOval(turn);
	}

	private Rectangle around(Point mm) {
		return new Rectangle(px(mm.x()) - GRIP_PX, px(mm.y()) - GRIP_PX, 2 * GRIP_PX, 2 * GRIP_PX);
	}

	private int px(double mm) {
		return (int) Math.round(mm * zoom.pixelsPerMm());
	}
}
