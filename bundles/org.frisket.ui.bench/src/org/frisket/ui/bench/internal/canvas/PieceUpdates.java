package org.frisket.ui.bench.internal.canvas;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.DeferredUpdateManager;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Tells what has to be painted anew in pieces. draw2d knows one box for each figure, in which all lies that its children
 * leave behind, and asks for the box around all of these.
 */
final class PieceUpdates extends DeferredUpdateManager {

	/** @param piece in the coordinates of the figure's bounds */
	private record Dirty(IFigure figure, Rectangle piece) {
	}

	private final KeptCanvas canvas;
	private final List<Dirty> dirty = new ArrayList<>();
	/** Of the repair under way, in pixels of the canvas. */
	private final Pieces pieces = new Pieces();

	PieceUpdates(KeptCanvas canvas) {
		this.canvas = canvas;
	}

	@Override
	public synchronized void addDirtyRegion(IFigure figure, int x, int y, int width, int height) {
		if (width > 0 && height > 0 && figure.isShowing()) {
			dirty.add(new Dirty(figure, new Rectangle(x, y, width, height)));
		}
		super.addDirtyRegion(figure, x, y, width, height);
	}

	/** Where the pieces lie on the canvas is known when the layout is. */
	@Override
	protected void repairDamage() {
		pieces.take();
		dirty.forEach(each -> pieces.add(onCanvas(each)));
		dirty.clear();
		super.repairDamage();
	}

	/** As far as a figure and those around it let it be seen. */
	private static Rectangle onCanvas(Dirty damage) {
		Rectangle seen = damage.piece().getCopy().intersect(damage.figure().getBounds());
		for (IFigure around = damage.figure().getParent(); around != null; around = around.getParent()) {
			around.translateToParent(seen);
			seen.intersect(around.getBounds());
		}
		return seen;
	}

	/** Called with the box around all that draw2d knows of. */
	@Override
	protected Graphics getGraphics(Rectangle box) {
		if (!canvas.isKept()) {
			return super.getGraphics(box);
		}
		if (!pieces.box().equals(box)) {
			// draw2d knows of more
			pieces.add(box);
		}
		canvas.redraw(pieces.take());
		return null;
	}
}
