package org.frisket.ui.bench.internal.imports;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CurvePath;

/** What was read, as small as it has to be: the contours of areas and lines, and a box for each picture. */
final class ArtPreview extends Canvas {

	private static final int MARGIN_PX = 8;
	/** More nodes would keep the window from moving. */
	private static final int MOST_NODES = 50_000;

	private Outline outline = Outline.EMPTY;
	private Bounds box = Bounds.EMPTY;

	ArtPreview(Composite parent) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
		setBackground(ThemeColour.BENCH_SHEET.colour());
		addListener(SWT.Paint, event -> paint(event.gc));
	}

	void show(List<ImportedArt> arts) {
		box = arts.stream().map(ImportedArt::bounds).reduce(Bounds.EMPTY, Bounds::with);
		outline = new Outline(arts.stream().flatMap(art -> art.layers().stream()).flatMap(layer -> layer.shapes().stream())
				.flatMap(shape -> outline(shape).contours().stream()).toList());
		redraw();
	}

	private static Outline outline(ImportedShape shape) {
		if (shape instanceof ImportedShape.Area area) {
			return area.outline();
		}
		return shape instanceof ImportedShape.Lines lines ? lines.outline() : box(shape.bounds());
	}

	private static Outline box(Bounds b) {
		return Outline.of(org.frisket.geometry.Contour.polygon(List.of(new org.frisket.geometry.Point(b.minX(), b.minY()),
				new org.frisket.geometry.Point(b.minX(), b.maxY()), new org.frisket.geometry.Point(b.maxX(), b.maxY()),
				new org.frisket.geometry.Point(b.maxX(), b.minY()))));
	}

	private void paint(GC gc) {
		Rectangle room = getClientArea();
		double side = Math.max(box.width(), box.height());
		if (box.isEmpty() || side <= 0) {
			return;
		}
		double scale = Math.min((room.width - 2 * MARGIN_PX) / Math.max(box.width(), side * 1e-3),
				(room.height - 2 * MARGIN_PX) / Math.max(box.height(), side * 1e-3));
		Transform fit = Transform.translation(-box.centre().x(), -box.centre().y()).then(Transform.scaling(scale, scale))
				.then(Transform.translation(room.width / 2.0, room.height / 2.0));
		gc.setAntialias(SWT.ON);
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		Outline shown = outline.nodeCount() <= MOST_NODES ? outline : box(box);
		Path path = CurvePath.of(getDisplay(), shown, fit);
		gc.drawPath(path);
		path.dispose();
	}
}
