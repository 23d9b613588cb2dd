package org.frisket.ui.bench.internal.print;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Path;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.model.OperationKind;
import org.frisket.ui.bench.internal.canvas.CurvePath;
import org.frisket.ui.bench.internal.looks.Shown;
import org.frisket.ui.bench.internal.looks.ShownPixels;
import org.frisket.ui.bench.internal.looks.SplitCurves;
import org.frisket.ui.bench.internal.picture.ElementPicture;
import org.frisket.ui.bench.internal.picture.PictureRim;
import org.frisket.ui.bench.internal.picture.Pixels;

/** An element on a page; its paths are made when a look asks for them and last until it is closed. */
final class PaperShown implements Shown, AutoCloseable {

	private final Device device;
	private final PrintedJob.PrintedElement element;
	private final Transform toUnits;
	private final SplitCurves split;
	private final List<Path> paths = new ArrayList<>();
	private Image image;

	/** @param toPaper from the job's frame into the units of the device */
	PaperShown(Device device, PrintedJob.PrintedElement element, Transform toPaper) {
		this.device = device;
		this.element = element;
		toUnits = element.shift().then(toPaper);
		split = SplitCurves.of(element.picture().curves());
	}

	private Path path(Outline outline) {
		Path path = CurvePath.of(device, outline, toUnits);
		paths.add(path);
		return path;
	}

	@Override
	public ElementPicture picture() {
		return element.picture();
	}

	@Override
	public Color stock() {
		return element.stock();
	}

	@Override
	public ShownPixels pixels() {
		Pixels pixels = element.picture().pixels();
		if (pixels == null) {
			return null;
		}
		if (image == null) {
			image = new Image(device, pixels.data());
		}
		return ShownPixels.of(image, pixels.box(), toUnits);
	}

	@Override
	public Path bleed() {
		PictureRim rim = element.picture().rim();
		return rim == null || rim.bleed().isEmpty() ? null : path(rim.bleed());
	}

	@Override
	public Path curves() {
		return path(element.picture().curves());
	}

	@Override
	public Path closed() {
		return path(split.closed());
	}

	@Override
	public Path open() {
		return split.open().isEmpty() ? null : path(split.open());
	}

	@Override
	public Path dashes(OperationKind kind) {
		Outline dashes = element.picture().dashes().get(kind);
		return dashes == null ? null : path(dashes);
	}

	@Override
	public Path hatching() {
		return path(element.picture().hatching());
	}

	/** What was before cleaning is not printed. */
	@Override
	public Path source() {
		return null;
	}

	@Override
	public Path removed() {
		return null;
	}

	@Override
	public void close() {
		paths.forEach(Path::dispose);
		if (image != null) {
			image.dispose();
		}
	}
}
