package org.frisket.export.pdf;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.frisket.geometry.Monitor;
import org.frisket.model.ImageBytes;
import org.frisket.model.OperationKind;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.PictureFormat;
import org.frisket.print.picture.UnreadablePictureException;

/**
 * Pictures as objects of a file, each once however often it is shown. All of them fill the unit square, their first row at
 * the top. SVG and pages of PDF stay vectors; files that a PDF can hold stay as they are; of others the pixels are kept.
 */
public final class PictureObjects {

	/** Of what cannot stay a vector in PDF, dots to the inch: as fine as common printers are. */
	private static final double FINE = 600;

	private record Key(ImageBytes image, int page) {
	}

	private final PdfFile pdf;
	private final Map<Key, Optional<PictureFile>> files = new HashMap<>();
	private final Map<Key, PDXObject> objects = new HashMap<>();

	PictureObjects(PdfFile pdf) {
		this.pdf = pdf;
	}

	/** @param page of the file, from 1 */
	public PDXObject object(ImageBytes image, int page, Monitor monitor) throws IOException {
		Key key = new Key(image, page);
		PDXObject object = objects.get(key);
		if (object == null) {
			try {
				object = made(key, file(key), monitor);
			} catch (UnreadablePictureException e) {
				throw new IOException(e.getMessage(), e);
			}
			objects.put(key, object);
		}
		return object;
	}

	/** Its pixels, as many as it has if they are fewer. @param width in pixels */
	public BufferedImage pixels(ImageBytes image, int page, int width, Monitor monitor) throws IOException {
		Optional<PictureFile> file = file(new Key(image, page));
		try {
			return file.isPresent() ? file.get().image(width, monitor) : pdf.image(image).getImage();
		} catch (UnreadablePictureException e) {
			throw new IOException(e.getMessage(), e);
		}
	}

	/** How wide it is in pixels; of what has none, as it would have to be. */
	public int width(ImageBytes image, int page) throws IOException {
		Optional<PictureFile> file = file(new Key(image, page));
		return file.isPresent() ? file.get().width() : pdf.image(image).getWidth();
	}

	private PDXObject made(Key key, Optional<PictureFile> found, Monitor monitor)
			throws IOException, UnreadablePictureException {
		PictureFile file = found.orElse(null);
		if (file == null) {
			return pdf.image(key.image);
		} else if (file.format() == PictureFormat.PDF) {
			return PageForm.of(pdf.document(), bytes(key.image), file.page(), pdf.group(Step.of(OperationKind.PRINT)));
		} else if (file.format() == PictureFormat.SVG) {
			PictureFile fine = file.drawnAt(Math.min(FINE, file.resolution().x()));
			Optional<? extends PDXObject> form = SvgForm.of(pdf.document(), fine, monitor);
			return form.isPresent() ? form.get() : pixels(fine, monitor);
		} else if (file.format() == PictureFormat.WEBP || !file.isUpright()) {
			return pixels(file, monitor);
		}
		return pdf.image(key.image);
	}

	private PDXObject pixels(PictureFile file, Monitor monitor) throws IOException, UnreadablePictureException {
		return LosslessFactory.createFromImage(pdf.document(), file.pixels(monitor).image());
	}

	/** Empty for a damaged one: as much of it is printed as the job shows. */
	private Optional<PictureFile> file(Key key) throws IOException {
		Optional<PictureFile> file = files.get(key);
		if (file == null) {
			try {
				file = Optional.of(PictureFile.of("", bytes(key.image), key.page));
			} catch (UnreadablePictureException e) {
				file = Optional.empty();
			}
			files.put(key, file);
		}
		return file;
	}

	private static byte[] bytes(ImageBytes image) throws IOException {
		try (InputStream in = image.open()) {
			return in.readAllBytes();
		}
	}
}
