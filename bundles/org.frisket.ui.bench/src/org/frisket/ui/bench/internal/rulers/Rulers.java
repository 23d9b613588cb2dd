package org.frisket.ui.bench.internal.rulers;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.frisket.geometry.Bounds;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.surface.SurfaceOption;

/** The rulers at the top and at the left of a bench, which stand around its canvas and follow what is seen there. */
public final class Rulers {

	private final Composite page;
	private final GraphicalViewer viewer;
	private final CanvasZoom zoom;
	private final Composite corner;
	private final RulerCanvas top;
	private final RulerCanvas left;

	/** @param page holds the canvas of the viewer and nothing else */
	public Rulers(Composite page, GraphicalViewer viewer, BenchDocument document, CanvasZoom zoom) {
		this.page = page;
		this.viewer = viewer;
		this.zoom = zoom;
		Control canvas = viewer.getControl();
		corner = new Composite(page, SWT.NONE);
		corner.setBackground(ThemeColour.BENCH_RULER.colour());
		top = new RulerCanvas(page, true, zoom);
		left = new RulerCanvas(page, false, zoom);
		corner.moveAbove(canvas);
		top.moveAbove(canvas);
		left.moveAbove(canvas);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(page);
		GridDataFactory.fillDefaults().hint(top.computeSize(0, 0)).applyTo(corner);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
		GridDataFactory.fillDefaults().grab(false, true).applyTo(left);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
		GuidePull.from(top, new Guides(viewer, document.job()));
		GuidePull.from(left, Guides.of(viewer));
		follow(document, canvas);
		optionsChanged();
	}

	private void follow(BenchDocument document, Control canvas) {
		zoom.whenLooking(this::redraw);
		viewer.addSelectionChangedListener(event -> showBand());
		document.addPictureListener(this::showBand);
		viewer.getEditDomain().getCommandStack().addCommandStackEventListener(this::stackEvent);
		canvas.addListener(SWT.MouseMove, this::pointerAt);
		canvas.addListener(SWT.MouseExit, event -> showPointer(-1, -1));
		Runnable unit = LengthUnit.whenChanged(() -> later(this::lookAgain));
		Runnable options = SurfaceOption.whenChanged(() -> later(this::optionsChanged));
		page.addListener(SWT.Dispose, event -> {
			unit.run();
			options.run();
		});
	}

	private void later(Runnable work) {
		if (!page.isDisposed()) {
			page.getDisplay().asyncExec(() -> {
				if (!page.isDisposed()) {
					work.run();
				}
			});
		}
	}

	private void stackEvent(CommandStackEvent event) {
		if (event.isPostChangeEvent()) {
			showBand();
		}
	}

	private void pointerAt(Event event) {
		showPointer(event.x, event.y);
	}

	private void showPointer(int x, int y) {
		top.setPointer(x);
		left.setPointer(y);
	}

	private void showBand() {
		if (page.isDisposed()) {
			return;
		}
		Bounds box = Selection.parts(viewer).stream().map(ElementPart::boundsInMm).reduce(Bounds.EMPTY, Bounds::with);
		top.setBand(box);
		left.setBand(box);
	}

	private void redraw() {
		if (!page.isDisposed()) {
			top.redraw();
			left.redraw();
		}
	}

	private void lookAgain() {
		redraw();
		((FigureCanvas) viewer.getControl()).getContents().repaint();
	}

	private void optionsChanged() {
		boolean shown = SurfaceOption.RULERS.isOn();
		for (Control control : new Control[] { corner, top, left }) {
			((GridData) control.getLayoutData()).exclude = !shown;
			control.setVisible(shown);
		}
		((GridLayout) page.getLayout()).numColumns = shown ? 2 : 1;
		page.layout(true);
		lookAgain();
	}

	/** The ruler at the top. */
	public Control top() {
		return top;
	}

	/** The ruler at the left. */
	public Control left() {
		return left;
	}
}
