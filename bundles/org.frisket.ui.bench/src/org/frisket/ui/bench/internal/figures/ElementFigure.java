package org.frisket.ui.bench.internal.figures;

import java.util.Objects;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.OperationKind;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.looks.BenchLook;
import org.frisket.ui.bench.internal.looks.CleaningPicture;
import org.frisket.ui.bench.internal.looks.GraphicsInk;
import org.frisket.ui.bench.internal.looks.Ink;
import org.frisket.ui.bench.internal.looks.Shown;
import org.frisket.ui.bench.internal.looks.ShownPixels;
import org.frisket.ui.bench.internal.looks.SplitCurves;
import org.frisket.ui.bench.internal.picture.ElementPicture;
import org.frisket.ui.bench.internal.picture.Pixels;

/** An element as it lies on the bench, painted as the look of the moment has it. */
public final class ElementFigure extends CurveFigure implements Shown {

	/** How near the pointer must come to a line, in pixels. */
	private static final int REACH_PX = 3;

	private Color stock;
	private boolean reachable = true;
	private BenchLook look = BenchLook.PREVIEW;
	private CleaningPicture before;
	private Transform beforeShift;
	private ElementPicture splitOf;
	private SplitCurves split;
	private Pixels imageOf;
	private Image image;

	public ElementFigure(CanvasZoom zoom) {
		super(zoom);
	}

	/** The colour of the stock; null for a stock without one. */
	public void setStock(Color colour) {
		if (!Objects.equals(stock, colour)) {
			stock = colour;
			repaint();
		}
	}

	/**
	 * How the element is looked at.
	 *
	 * @param newBefore what it was before it was cleaned, moved from where that was made by {@code newShift}; null if not
	 *                  known
	 */
	public void setLook(BenchLook newLook, CleaningPicture newBefore, Transform newShift) {
		boolean another = before != newBefore || newShift != null && !newShift.equals(beforeShift);
		if (!another && look == newLook) {
			return;
		}
		look = newLook;
		before = newBefore;
		beforeShift = newShift;
		if (another) {
			zoomed();
		}
		repaint();
	}

	/** Whether the pointer finds the element, which it does not on a locked layer. */
	public void setReachable(boolean reachable) {
		this.reachable = reachable;
	}

	@Override
	public boolean containsPoint(int x, int y) {
		if (!reachable || !getBounds().contains(x, y)) {
			return false;
		}
		Point place = new Point(Units.mm(x), Units.mm(y));
		double reach = REACH_PX / zoom.pixelsPerMm();
		// nothing of these lies there but their lines: what is seen behind them is meant
		return picture().part() || picture().waste() ? passes(place, reach) : touches(place, reach);
	}

	@Override
	protected Bounds drawnInMm() {
		Bounds drawn = picture().pixels() == null ? boundsInMm() : boundsInMm().with(boxInMm(picture().painted(), shift()));
		return before == null ? drawn : drawn.with(boxInMm(before.source().bounds(), beforeShift));
	}

	/** Open lines are dashed in those looks that show shapes alone. */
	@Override
	protected boolean isDashed() {
		return picture().placeholder() || look == BenchLook.OUTLINE || look == BenchLook.BEFORE
				|| picture().strokes().stream().anyMatch(kind -> OperationStroke.of(kind).isDashed());
	}

	@Override
	protected void paintCurves(Graphics graphics) {
		Ink ink = new GraphicsInk(graphics);
		if (picture().placeholder()) {
			OperationStroke.paintPlaceholder(ink, curves());
		} else {
			look.paint(this, ink);
		}
	}

	@Override
	public Color stock() {
		return stock != null ? stock : ThemeColour.BENCH_STOCK.colour();
	}

	@Override
	public ShownPixels pixels() {
		Pixels pixels = picture().pixels();
		if (pixels != imageOf) {
			disposeImage();
			imageOf = pixels;
			image = pixels == null ? null : new Image(Display.getCurrent(), pixels.data());
		}
		double scale = zoom.pixelsPerMm();
		return pixels == null ? null
				: ShownPixels.of(image, pixels.box(), shift().then(Transform.scaling(scale, scale)));
	}

	private void disposeImage() {
		if (image != null) {
			image.dispose();
		}
		image = null;
		imageOf = null;
	}

	@Override
	public void removeNotify() {
		disposeImage();
		super.removeNotify();
	}

	@Override
	public Path bleed() {
		return picture().rim() == null || picture().rim().bleed().isEmpty() ? null : path(picture().rim().bleed(), shift());
	}

	@Override
	public Path curves() {
		return path(picture().curves(), shift());
	}

	@Override
	public Path closed() {
		return path(split().closed(), shift());
	}

	@Override
	public Path open() {
		return split().open().isEmpty() ? null : path(split().open(), shift());
	}

	@Override
	public Path dashes(OperationKind kind) {
		Outline dashes = picture().dashes().get(kind);
		return dashes == null ? null : path(dashes, shift());
	}

	@Override
	public Path hatching() {
		return path(picture().hatching(), shift());
	}

	@Override
	public Path source() {
		return before == null ? null : path(before.source(), beforeShift);
	}

	@Override
	public Path removed() {
		return before == null ? null : path(before.removed(), beforeShift);
	}

	private SplitCurves split() {
		if (splitOf != picture()) {
			splitOf = picture();
			split = SplitCurves.of(splitOf.curves());
		}
		return split;
	}
}
