package org.frisket.ui.bench.internal.editor;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.swt.SWT;
import org.frisket.geometry.Point;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.BenchRootPart;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.parts.BenchPartFactory;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.screen.ScreenWatch;

/** The viewer of the bench: set up once, fitted to the sheet when first seen, telling where the pointer is. */
final class BenchCanvas {

	/** How much larger one notch of the wheel makes things. */
	private static final double WHEEL_FACTOR = 1.2;
	private static final double LINES_PER_NOTCH = 3;

	private final GraphicalViewer viewer;
	private final BenchRootPart root = new BenchRootPart();
	private final Runnable changed;
	private Point pointer;
	private boolean fitted;

	/** @param changed called when the pointer or the zoom has moved */
	BenchCanvas(GraphicalViewer viewer, Runnable changed) {
		this.viewer = viewer;
		this.changed = changed;
		viewer.setRootEditPart(root);
		viewer.setEditPartFactory(new BenchPartFactory());
		viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.MOD1),
				(MouseWheelHandler) (event, at) -> zoomAtPointer(event));
		root.zoom().addListener(factor -> changed.run());
		new ScreenWatch(viewer.getControl(), screen -> {
			root.zoom().setScreen(screen);
			changed.run();
		});
		configure((FigureCanvas) viewer.getControl());
	}

	private void configure(FigureCanvas canvas) {
		canvas.setBackground(ThemeColour.BENCH_DESK.colour());
		// fading bars would hide what lies under them and set off repaints of everything
		canvas.setScrollbarsMode(SWT.NONE);
		canvas.setScrollBarVisibility(FigureCanvas.ALWAYS);
		canvas.addListener(SWT.MouseMove, event -> setPointer(root.zoom().toMm(event.x, event.y)));
		canvas.addListener(SWT.MouseExit, event -> setPointer(null));
		// figures give their paths back when they leave, which none does of itself as the window closes
		canvas.addListener(SWT.Dispose, event -> root.getFigure().removeNotify());
		canvas.addListener(SWT.Resize, event -> canvas.getDisplay().asyncExec(this::fitOnce));
	}

	private void zoomAtPointer(org.eclipse.swt.widgets.Event event) {
		event.doit = false;
		root.zoom().about(event.x, event.y, Math.pow(WHEEL_FACTOR, event.count / LINES_PER_NOTCH));
	}

	private void setPointer(Point mm) {
		pointer = mm;
		changed.run();
	}

	/** Where the pointer is, in mm; null if it is elsewhere. */
	Point pointer() {
		return pointer;
	}

	CanvasZoom zoom() {
		return root.zoom();
	}

	/** Shows the whole sheet. */
	void fit() {
		if (viewer.getContents() instanceof JobPart job) {
			root.zoom().fit(job.sheet());
		}
	}

	/** Shows the whole sheet the first time that there is both a picture and room for it. */
	void fitOnce() {
		if (fitted || viewer.getControl() == null || viewer.getControl().isDisposed()
				|| !(viewer.getContents() instanceof JobPart job) || !job.isReady()) {
			return;
		}
		org.eclipse.swt.graphics.Rectangle room = viewer.getControl().getBounds();
		if (room.width > 1 && room.height > 1) {
			((FigureCanvas) viewer.getControl()).getViewport().getUpdateManager().performUpdate();
			fit();
			fitted = true;
		}
	}
}
