package org.frisket.ui.bench.internal.figures;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
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
import org.frisket.ui.bench.internal.picture.PictureChange;
import org.frisket.ui.bench.internal.picture.SeenPart;

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
	/** Of what is painted just now, in mm; null for all. */
	private Bounds window;
	/** Paths of what is painted just now, without what is out of sight. */
	private final Map<Outline, Path> inWindow = new IdentityHashMap<>();

	CurveFigure(CanvasZoom zoom) {
		super(zoom);
	}

	/** Shows a picture, moved from where it was made by {@code shift}. */
	public void show(ElementPicture newPicture, Transform newShift) {
		if (picture == newPicture && shift.equals(newShift)) {
			return;
		}
		Optional<Bounds> changed = shift.equals(newShift) && getParent() != null
				? PictureChange.between(picture, newPicture, isDashed())
				: Optional.empty();
		picture = newPicture;
		shift = newShift;
		disposePaths();
		if (changed.isEmpty()) {
			setBounds(Units.figure(extent()));
			repaint();
			return;
		}
		// to set the bounds would have all of it painted again
		bounds.setBounds(Units.figure(extent()));
		invalidate();
		fireFigureMoved();
		if (!changed.get().isEmpty()) {
			getParent().repaint(Units.figure(boxInMm(changed.get(), shift).grown(EDGE_PX / zoom.pixelsPerMm())));
		}
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

	/** Whether one of its lines passes a place in mm within {@code reach} mm. */
	protected boolean passes(Point mm, double reach) {
		return shift.determinant() != 0 && picture.flat().passes(shift.inverse().apply(mm), reach);
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		if (!picture.curves().isEmpty()) {
			PixelSpace.paint(graphics, zoom.zoom(), () -> {
				window = window(graphics);
				paintCurves(graphics);
				window = null;
			});
			inWindow.values().forEach(Path::dispose);
			inWindow.clear();
		}
	}

	/** What is painted of the figure, in mm; null if that is most of it. */
	private Bounds window(Graphics graphics) {
		double scale = zoom.pixelsPerMm();
		Rectangle clip = graphics.getClip(new Rectangle());
		Bounds seen = new Bounds(clip.x / scale, clip.y / scale, (clip.x + clip.width) / scale,
				(clip.y + clip.height) / scale).grown(EDGE_PX / scale);
		Bounds all = drawnInMm();
		double width = Math.min(seen.maxX(), all.maxX()) - Math.max(seen.minX(), all.minX());
		double height = Math.min(seen.maxY(), all.maxY()) - Math.max(seen.minY(), all.minY());
		return 2 * width * height > all.width() * all.height() ? null : seen;
	}

	/** Whether any line is painted in a pattern, which depends on all of the contour before it. */
	protected boolean isDashed() {
		return false;
	}

	/** Paints in pixels, antialiased. */
	protected abstract void paintCurves(Graphics graphics);

	/** The curves in pixels; kept by the figure. */
	protected Path curves() {
		return path(picture.curves(), shift);
	}

	/** An outline in pixels, moved from where it was made; kept by the figure as long as it is this very outline. */
	protected Path path(Outline outline, Transform moved) {
		if (window == null || moved.determinant() == 0) {
			return paths.computeIfAbsent(outline, key -> made(key, moved));
		}
		Bounds seen = boxInMm(window, moved.inverse());
		return inWindow.computeIfAbsent(outline,
				key -> made(isDashed() ? SeenPart.wholeContours(key, seen) : SeenPart.of(key, seen), moved));
	}

	private Path made(Outline outline, Transform moved) {
		double scale = zoom.pixelsPerMm();
		return CurvePath.of(Display.getCurrent(), outline, moved.then(Transform.scaling(scale, scale)));
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
