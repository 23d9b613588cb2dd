package org.frisket.ui.bench.internal.rulers;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.TreeSearch;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.Handle;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.model.Guide;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.surface.SurfaceOption;

/** The guides above the elements: dashed lines, painted where they are seen, by which they can be taken hold of. */
public final class GuideLayer extends FreeformLayer implements Handle {

	/** Under this name the root has it. */
	public static final String KEY = "org.frisket.guides"; //$NON-NLS-1$

	private static final int REACH_PX = 3;
	private static final int[] DASHES = { 6, 4 };

	private final Supplier<CanvasZoom> zoom;
	private Guides guides;
	private Guide under;
	private GuidePlace dragged;

	/** @param zoom asked when it is painted, since layers are there before a zoom is */
	public GuideLayer(Supplier<CanvasZoom> zoom) {
		this.zoom = zoom;
	}

	void setGuides(Guides newGuides) {
		guides = newGuides;
	}

	/** Shows a guide where it is dragged to; null for none. */
	void setDragged(GuidePlace place) {
		dragged = place;
		repaint();
	}

	/** Where a guide is being dragged to; null if none is. */
	GuidePlace dragged() {
		return dragged;
	}

	private List<Guide> shown() {
		return guides == null || !SurfaceOption.GUIDES.isOn() ? List.of() : guides.all();
	}

	/** The guide near a pixel of the layer, the one laid last first; null if there is none or they are locked. */
	private Guide near(int x, int y) {
		Guide found = null;
		if (!SurfaceOption.GUIDES_LOCKED.isOn()) {
			for (Guide guide : shown()) {
				if (Math.abs(px(guide.getAt()) - (guide.isAcross() ? y : x)) <= REACH_PX) {
					found = guide;
				}
			}
		}
		return found;
	}

	private int px(double mm) {
		return (int) Math.round(mm * zoom.get().pixelsPerMm());
	}

	/** Layers above pass a search on only to where one of their children says it is. */
	@Override
	public boolean containsPoint(int x, int y) {
		return near(x, y) != null;
	}

	@Override
	public IFigure findFigureAt(int x, int y, TreeSearch search) {
		if (search.prune(this) || !search.accept(this)) {
			return null;
		}
		under = near(x, y);
		return under == null ? null : this;
	}

	/** The bench is as large as what lies on it; guides make it no larger. */
	@Override
	public Rectangle getFreeformExtent() {
		return new Rectangle();
	}

	@Override
	public Cursor getCursor() {
		return under == null ? super.getCursor() : under.isAcross() ? Cursors.SIZENS : Cursors.SIZEWE;
	}

	@Override
	public DragTracker getDragTracker() {
		return new GuideTracker(guides, under);
	}

	@Override
	public Point getAccessibleLocation() {
		return null;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		Rectangle seen = graphics.getClip(new Rectangle());
		graphics.setLineWidth(1);
		for (Guide guide : shown()) {
			if (dragged == null || dragged.guide() != guide) {
				boolean chosen = guides.chosen() == guide;
				graphics.setForegroundColor((chosen ? ThemeColour.BENCH_SELECTION : ThemeColour.BENCH_GUIDE).colour());
				paint(graphics, seen, guide.isAcross(), guide.getAt(), chosen);
			}
		}
		if (dragged != null) {
			graphics.setForegroundColor(ThemeColour.BENCH_GUIDE.colour());
			paint(graphics, seen, dragged.across(), dragged.at(), true);
		}
	}

	private void paint(Graphics graphics, Rectangle seen, boolean across, double at, boolean whole) {
		int place = px(at);
		boolean isSeen = across ? place >= seen.y && place < seen.bottom() : place >= seen.x && place < seen.right();
		if (!isSeen) {
			// a dash that is set and not drawn with would be the next figure's: draw2d takes it back at drawing only
			return;
		}
		if (whole) {
			graphics.setLineStyle(Graphics.LINE_SOLID);
		} else {
			graphics.setLineDash(DASHES);
		}
		// begun at a multiple of the dashes, so that they stand still while parts are painted again
		int period = DASHES[0] + DASHES[1];
		if (across) {
			graphics.drawLine(Math.floorDiv(seen.x, period) * period, place, seen.right(), place);
		} else {
			graphics.drawLine(place, Math.floorDiv(seen.y, period) * period, place, seen.bottom());
		}
	}
}
