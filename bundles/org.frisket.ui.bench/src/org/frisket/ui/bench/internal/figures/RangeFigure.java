package org.frisket.ui.bench.internal.figures;

import java.util.List;

import org.eclipse.draw2d.Graphics;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;

/** The letters that are selected in a wording that is typed: a veil of the accent over each, letting it be seen. */
public final class RangeFigure extends ZoomedFigure {

	private static final int ALPHA = 70;
	private static final int EDGE_PX = 2;

	private List<List<Point>> letters = List.of();

	public RangeFigure(CanvasZoom zoom) {
		super(zoom);
		setVisible(false);
	}

	/** @param newLetters corners of the veil over each letter, in mm */
	public void show(List<List<Point>> newLetters) {
		if (letters.equals(newLetters)) {
			return;
		}
		letters = List.copyOf(newLetters);
		setVisible(!letters.isEmpty());
		zoomed();
		repaint();
	}

	/** Corners of the veil over each letter, in mm. */
	public List<List<Point>> letters() {
		return letters;
	}

	@Override
	protected void zoomed() {
		Bounds all = letters.stream().flatMap(List::stream).reduce(Bounds.EMPTY, Bounds::with, Bounds::with);
		if (!all.isEmpty()) {
			setBounds(Units.figure(all.grown(EDGE_PX / zoom.pixelsPerMm())));
		}
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		PixelSpace.paint(graphics, zoom.zoom(), () -> {
			double scale = zoom.pixelsPerMm();
			graphics.setBackgroundColor(ThemeColour.BENCH_SELECTION.colour());
			graphics.setAlpha(ALPHA);
			for (List<Point> letter : letters) {
				int[] corners = new int[2 * letter.size()];
				for (int i = 0; i < letter.size(); i++) {
					corners[2 * i] = (int) Math.round(letter.get(i).x() * scale);
					corners[2 * i + 1] = (int) Math.round(letter.get(i).y() * scale);
				}
				graphics.fillPolygon(corners);
			}
		});
	}
}
