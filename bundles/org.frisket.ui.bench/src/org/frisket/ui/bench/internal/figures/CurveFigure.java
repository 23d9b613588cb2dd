package org.frisket.ui.bench.internal.figures;

import java.util.IdentityHashMap;
import java.util.Map;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.CurvePath;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.picture.ElementPicture;

/**
 * A figure that shows the picture of an element as true curves. Its paths are made for the zoom of the moment and kept
 * until the zoom or the picture changes.
 */
abstract class CurveFigure extends ZoomedFigure {

	/** The widest line painted across an edge, with room for antialiasing. */
	private static final int EDGE_PX = 4;

	private ElementPicture picture = ElementPicture.NONE;
	private Transform shift = Transform.IDENTITY;
	private final Map<Outline, Path> paths = new IdentityHashMap<>();

	CurveFigure(CanvasZoom zoom) {
		super(zoom);
	}

	/** Shows a picture, moved from where it was made by {@code shift}. */
	public void show(ElementPicture newPicture, Transform newShift) {
		if (picture == newPicture && shift.equals(newShift)) {
			return;
		}
		picture = newPicture;
		shift = newShift;
		disposePaths();
		setBounds(Units.figure(extent()));
		repaint();
	}

	public ElementPicture picture() {
		return picture;
	}

	public Transform shift() {
		return shift;
	}

	/** Bounds in mm of what is shown, without the width of lines; not tight if the shift turns. */
	public Bounds boundsInMm() {
		return boxInMm(picture.bounds(), shift);
	}

	/** Around a box that was moved; not tight if it was turned. */
	static Bounds boxInMm(Bounds own, Transform moved) {
		if (own.isEmpty()) {
			return own;
		}
		return Bounds.of(moved.apply(new Point(own.minX(), own.minY())))
				.with(moved.apply(new Point(own.maxX(), own.minY())))
				.with(moved.apply(new Point(own.minX(), own.maxY())))
				.with(moved.apply(new Point(own.maxX(), own.maxY())));
	}

	private Bounds extent() {
		return drawnInMm().grown(EDGE_PX / zoom.pixelsPerMm());
	}

	/** Bounds in mm of all that is painted; for those who paint more than the picture. */
	protected Bounds drawnInMm() {
		return boundsInMm();
	}

	/** Whether the shape itself is at a place in mm, or within {@code reach} mm of it. */
	protected boolean touches(Point mm, double reach) {
		return shift.determinant() != 0 && picture.flat().touches(shift.inverse().apply(mm), reach);
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		if (!picture.curves().isEmpty()) {
			PixelSpace.paint(graphics, zoom.zoom(), () -> paintCurves(graphics));
		}
	}

	/** Paints in pixels, antialiased. */
	protected abstract void paintCurves(Graphics graphics);

	/** The curves in pixels; kept by the figure. */
	protected Path curves() {
		return path(picture.curves(), shift);
	}

	/** An outline in pixels, moved from where it was made; kept by the figure as long as it is this very outline. */
	protected Path path(Outline outline, Transform moved) {
		return paths.computeIfAbsent(outline, key -> {
			double scale = zoom.pixelsPerMm();
			return CurvePath.of(Display.getCurrent(), key, moved.then(Transform.scaling(scale, scale)));
		});
	}

	/** What is painted is another than before, or in another size. */
	@Override
	protected final void zoomed() {
		disposePaths();
		setBounds(Units.figure(extent()));
	}

	private void disposePaths() {
		paths.values().forEach(Path::dispose);
		paths.clear();
	}

	@Override
	public void addNotify() {
		super.addNotify();
		zoomed();
	}

	@Override
	public void removeNotify() {
		disposePaths();
		super.removeNotify();
	}
}
