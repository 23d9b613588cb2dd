package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.frisket.geometry.Bounds;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;

/**
 * A small flag planted on a place, as large in pixels at every zoom. A raised one says its measure beside its number, and
 * one under the pointer its cure too.
 */
public final class FlagFigure extends ZoomedFigure {

	private static final int POLE_PX = 16;
	private static final int SPACE_PX = 4;
	private static final int FOOT_PX = 2;

	private final org.frisket.geometry.Point foot;
	private final ThemeColour colour;
	private final String number;
	private final String measure;
	private String cure = ""; //$NON-NLS-1$
	private boolean raised;
	private boolean hovered;

	/**
	 * @param foot    where it is planted, in mm
	 * @param measure what it says when raised, after its number; empty for nothing
	 */
	public FlagFigure(CanvasZoom zoom, org.frisket.geometry.Point foot, ThemeColour colour, String number,
			String measure) {
		super(zoom);
		this.foot = foot;
		this.colour = colour;
		this.number = number;
		this.measure = measure;
	}

	/** Whether it says its measure too. */
	public void setRaised(boolean raise) {
		if (raised != raise) {
			raised = raise;
			zoomed();
		}
	}

	/** What it says of the cure under the pointer; empty for nothing. */
	public void setCure(String text) {
		if (!cure.equals(text)) {
			cure = text;
			zoomed();
		}
	}

	/** Whether the pointer is on it. */
	public void setHovered(boolean hover) {
		if (hovered != hover) {
			hovered = hover;
			zoomed();
		}
	}

	/** Whether its cloth is at a place in pixels of the bench. */
	public boolean isAt(int x, int y) {
		return getFont() != null && cloth().translate(zoom.toPixel(foot)).contains(x, y);
	}

	public boolean isRaised() {
		return raised;
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	/** What is written on it now. */
	public String text() {
		String first = (raised || hovered) && !measure.isEmpty() ? number + "  " + measure : number; //$NON-NLS-1$
		return hovered && !cure.isEmpty() ? first + "\n" + cure : first; //$NON-NLS-1$
	}

	/** The cloth, in pixels from the foot. */
	private Rectangle cloth() {
		Dimension size = FigureUtilities.getTextExtents(text(), getFont());
		int height = size.height + SPACE_PX / 2;
		return new Rectangle(0, -POLE_PX - height, size.width + 2 * SPACE_PX, height);
	}

	@Override
	protected void zoomed() {
		if (getFont() == null) {
			return;
		}
		double scale = zoom.pixelsPerMm();
		Rectangle px = cloth();
		px.union(0, 0);
		px.expand(FOOT_PX + 1, FOOT_PX + 1);
		setBounds(Units.figure(new Bounds(foot.x() + px.x / scale, foot.y() + px.y / scale,
				foot.x() + px.right() / scale, foot.y() + px.bottom() / scale)));
		repaint();
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		PixelSpace.paint(graphics, zoom.zoom(), () -> paintFlag(graphics));
	}

	private void paintFlag(Graphics graphics) {
		int x = (int) Math.round(foot.x() * zoom.pixelsPerMm());
		int y = (int) Math.round(foot.y() * zoom.pixelsPerMm());
		Rectangle cloth = cloth().translate(x, y);
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.setLineWidth(3);
		graphics.drawLine(x, y, x, cloth.y);
		graphics.setForegroundColor(colour.colour());
		graphics.setBackgroundColor(colour.colour());
		graphics.setLineWidth(1);
		graphics.drawLine(x, y, x, cloth.y);
		graphics.fillOval(x - FOOT_PX, y - FOOT_PX, 2 * FOOT_PX + 1, 2 * FOOT_PX + 1);
		graphics.fillRectangle(cloth);
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.drawText(text(), cloth.x + SPACE_PX, cloth.y + SPACE_PX / 4);
	}

	@Override
	public void addNotify() {
		super.addNotify();
		zoomed();
	}
}
