package org.frisket.ui.bench.internal.canvas;

import java.util.stream.DoubleStream;

import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.editparts.ZoomListener;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.ui.bench.internal.screen.Calibration;

/**
 * How large and which part of the bench is seen. Pixels are those of the canvas control, counted from its top left; a
 * scale of 1 shows things at their true size, as far as that is known of the screen.
 */
public final class CanvasZoom {

	private static final double[] STEPS = { 0.05, 0.1, 0.17, 0.25, 0.33, 0.5, 0.67, 0.75, 1, 1.5, 2, 3, 4, 6, 8, 12, 16,
			24, 32, 48, 64 };
	private static final int MARGIN_PX = 24;
	/** In a millimetre: a thousand times finer than anything that can be made. */
	private static final double FINEST_STEPS = 1e6;

	/** How small and how large things can be shown. */
	public static final double LEAST_SCALE = STEPS[0];
	public static final double MOST_SCALE = STEPS[STEPS.length - 1];

	private final ZoomManager manager;
	private final Viewport viewport;
	private double trueSize;

	public CanvasZoom(ZoomManager manager, Viewport viewport) {
		this.manager = manager;
		this.viewport = viewport;
		setScreen(Calibration.ofResolution(Display.getCurrent().getDPI().x));
		manager.setZoom(trueSize);
	}

	/** How finely the screen shows things, from now on. What is seen stays as it is; only its scale is another. */
	public void setScreen(Calibration screen) {
		trueSize = screen.pixelsPerMm() / Units.PER_MM;
		manager.setZoomLevels(DoubleStream.of(STEPS).map(step -> step * trueSize).toArray());
		manager.setUIMultiplier(1 / trueSize);
	}

	/** 1 at true size. */
	public double scale() {
		return manager.getZoom() / trueSize;
	}

	public double pixelsPerMm() {
		return manager.getZoom() * Units.PER_MM;
	}

	/** Pixels per figure unit. */
	public double zoom() {
		return manager.getZoom();
	}

	public void addListener(ZoomListener listener) {
		manager.addZoomListener(listener);
	}

	public void removeListener(ZoomListener listener) {
		manager.removeZoomListener(listener);
	}

	/** The place in mm that is shown at a pixel. */
	public Point toMm(double px, double py) {
		org.eclipse.draw2d.geometry.Point view = viewport.getViewLocation();
		return new Point((px + view.x) / pixelsPerMm(), (py + view.y) / pixelsPerMm());
	}

	/** The pixel at which a place in mm is shown, rounded. */
	public org.eclipse.draw2d.geometry.Point toPixel(Point mm) {
		org.eclipse.draw2d.geometry.Point view = viewport.getViewLocation();
		return new org.eclipse.draw2d.geometry.Point((int) Math.round(mm.x() * pixelsPerMm()) - view.x,
				(int) Math.round(mm.y() * pixelsPerMm()) - view.y);
	}

	/** Calls the listener when another part is seen or at another scale; it goes with the viewport. */
	public void whenLooking(Runnable listener) {
		viewport.addPropertyChangeListener(Viewport.PROPERTY_VIEW_LOCATION, event -> listener.run());
		manager.addZoomListener(factor -> listener.run());
	}

	/** The next power of ten below the size of a pixel, in mm. */
	public double step() {
		return Math.pow(10, Math.floor(Math.log10(1 / pixelsPerMm())));
	}

	/** A length or a place in mm to a round {@linkplain #step() step}, which nobody sees from the pointer's own. */
	public double rounded(double mm) {
		double steps = Math.pow(10, -Math.floor(Math.log10(1 / pixelsPerMm())));
		return Math.round(mm * steps) / steps;
	}

	/** A length in mm without what is left of adding and subtracting. */
	public static double plain(double mm) {
		return Math.rint(mm * FINEST_STEPS) / FINEST_STEPS;
	}

	/** The next larger step, about the middle of what is seen. */
	public void in() {
		toScale(DoubleStream.of(STEPS).filter(step -> step > scale() * 1.001).findFirst().orElse(scale()));
	}

	/** The next smaller step, about the middle of what is seen. */
	public void out() {
		toScale(DoubleStream.of(STEPS).filter(step -> step < scale() / 1.001).reduce((a, b) -> b).orElse(scale()));
	}

	/** True size, about the middle of what is seen. */
	public void trueSize() {
		toScale(1);
	}

	/** About the middle of what is seen; 1 is true size. */
	public void toScale(double scale) {
		Rectangle seen = viewport.getClientArea();
		about(seen.width / 2.0, seen.height / 2.0, scale / scale());
	}

	/** Larger by a factor, with the place under the given pixel staying where it is. */
	public void about(double px, double py, double factor) {
		Point anchor = toMm(px, py);
		manager.setZoom(manager.getZoom() * factor);
		lookAt(anchor, px, py);
	}

	/** Shows a box in mm as large as it fits, in the middle; nothing happens for an empty box or canvas. */
	public void fit(Bounds mm) {
		Rectangle seen = viewport.getClientArea();
		double width = seen.width - 2 * MARGIN_PX;
		double height = seen.height - 2 * MARGIN_PX;
		if (mm.isEmpty() || width <= 0 || height <= 0) {
			return;
		}
		manager.setZoom(Math.min(width / Math.max(mm.width(), 1), height / Math.max(mm.height(), 1)) / Units.PER_MM);
		lookAt(mm.centre(), seen.width / 2.0, seen.height / 2.0);
	}

	/** Brings a place in mm into view, in the middle if it is not well inside already. */
	public void reveal(Point mm) {
		Rectangle seen = viewport.getClientArea();
		org.eclipse.draw2d.geometry.Point pixel = toPixel(mm);
		boolean wellInside = pixel.x >= MARGIN_PX && pixel.y >= MARGIN_PX && pixel.x < seen.width - MARGIN_PX
				&& pixel.y < seen.height - MARGIN_PX;
		if (!wellInside) {
			lookAt(mm, seen.width / 2.0, seen.height / 2.0);
		}
	}

	/** Moves the view by pixels, against the content. */
	public void pan(int dx, int dy) {
		viewport.setViewLocation(viewport.getViewLocation().getTranslated(dx, dy));
	}

	private void lookAt(Point mm, double px, double py) {
		// the scroll range has to know the new scale before the view can go there
		viewport.validate();
		viewport.setViewLocation((int) Math.round(mm.x() * pixelsPerMm() - px),
				(int) Math.round(mm.y() * pixelsPerMm() - py));
	}
}
