package org.frisket.ui.bench.internal.imports;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CurvePath;

/** What was read, as small as it has to be: pictures, and over them the contours of areas and lines; a box for what cannot be shown. */
final class ArtPreview extends Canvas {

	private static final int MARGIN_PX = 8;
	/** More nodes would keep the window from moving. */
	private static final int MOST_NODES = 50_000;

	private Outline outline = Outline.EMPTY;
	private Bounds box = Bounds.EMPTY;
	private final Map<Image, Bounds> images = new LinkedHashMap<>();

	ArtPreview(Composite parent) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
		setData("preview"); //$NON-NLS-1$
		setBackground(ThemeColour.BENCH_SHEET.colour());
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Dispose, event -> clear());
	}

	void show(List<ReadArt> read) {
		clear();
		List<ImportedArt> arts = read.stream().map(ReadArt::art).toList();
		read.stream().flatMap(art -> art.pixels().stream())
				.forEach(pixels -> images.put(new Image(getDisplay(), pixels.data()), pixels.box()));
		box = arts.stream().map(ImportedArt::bounds).reduce(Bounds.EMPTY, Bounds::with);
		outline = new Outline(arts.stream().flatMap(art -> art.layers().stream()).flatMap(layer -> layer.shapes().stream())
				.filter(shape -> !isShown(shape)).flatMap(shape -> outline(shape).contours().stream()).toList());
		redraw();
	}

	private void clear() {
		images.keySet().forEach(Image::dispose);
		images.clear();
	}

	private boolean isShown(ImportedShape shape) {
		return shape instanceof ImportedShape.Picture && images.containsValue(shape.bounds());
	}

	private static Outline outline(ImportedShape shape) {
		if (shape instanceof ImportedShape.Area area) {
			return area.outline();
		}
		return shape instanceof ImportedShape.Lines lines ? lines.outline() : box(shape.bounds());
	}

	private static Outline box(Bounds b) {
		return Outline.of(Contour.polygon(List.of(new Point(b.minX(), b.minY()), new Point(b.minX(), b.maxY()),
				new Point(b.maxX(), b.maxY()), new Point(b.maxX(), b.minY()))));
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
		gc.setInterpolation(SWT.HIGH);
		images.forEach((image, place) -> {
			Bounds at = Bounds.of(fit.apply(new Point(place.minX(), place.minY())))
					.with(fit.apply(new Point(place.maxX(), place.maxY())));
			Rectangle all = image.getBounds();
			gc.drawImage(image, 0, 0, all.width, all.height, (int) Math.round(at.minX()), (int) Math.round(at.minY()),
					(int) Math.max(1, Math.round(at.width())), (int) Math.max(1, Math.round(at.height())));
		});
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		Outline shown = outline.nodeCount() <= MOST_NODES ? outline : box(box);
		Path path = CurvePath.of(getDisplay(), shown, fit);
		gc.drawPath(path);
		path.dispose();
	}
}
