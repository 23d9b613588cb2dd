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
	public static final double FINE = 600;

	private static final double MM_PER_INCH = 25.4;

	/** A page of a file. */
	private record Page(ImageBytes image, int page) {
	}

	/** @param pixels across, of what has none but may need them; 0 for others */
	private record Key(Page page, int pixels) {
	}

	private final PdfFile pdf;
	private final Map<Page, Optional<PictureFile>> files = new HashMap<>();
	private final Map<Key, PDXObject> objects = new HashMap<>();

	PictureObjects(PdfFile pdf) {
		this.pdf = pdf;
	}

	/**
	 * @param page  of the file, from 1
	 * @param width that it is shown in, mm: what cannot stay a vector has as many pixels as that asks for
	 */
	public PDXObject object(ImageBytes image, int page, double width, Monitor monitor) throws IOException {
		Page from = new Page(image, page);
		try {
			Optional<PictureFile> file = fine(file(from), width);
			Key key = new Key(from, file.filter(each -> each.format() == PictureFormat.SVG).map(PictureFile::width).orElse(0));
			PDXObject object = objects.get(key);
			if (object == null) {
				object = made(image, file, monitor);
				objects.put(key, object);
			}
			return object;
		} catch (UnreadablePictureException e) {
			throw new IOException(e.getMessage(), e);
		}
	}

	/** An SVG with the pixels that it has where it has to have some. */
	private static Optional<PictureFile> fine(Optional<PictureFile> file, double width) throws UnreadablePictureException {
		if (file.isEmpty() || file.get().format() != PictureFormat.SVG) {
			return file;
		}
		double pixels = Math.min(FINE * width / MM_PER_INCH, file.get().drawnFor(width).width());
		return Optional.of(file.get().drawnAt(pixels * MM_PER_INCH / file.get().trueWidth()));
	}

	/**
	 * How many shapes of an SVG cannot stay vectors in a PDF, such as what is seen through a mask; 0 for all else, and for what
	 * cannot be read, which is told elsewhere.
	 */
	public static int shapesAsPixels(ImageBytes image, Monitor monitor) throws IOException {
		try {
			PictureFile file = PictureFile.of("", bytes(image));
			return file.format() == PictureFormat.SVG ? SvgForm.pixels(file, monitor) : 0;
		} catch (UnreadablePictureException e) {
			return 0;
		}
	}

	/** Its pixels, as many as it has if they are fewer. @param width in pixels */
	public BufferedImage pixels(ImageBytes image, int page, int width, Monitor monitor) throws IOException {
		Optional<PictureFile> file = file(new Page(image, page));
		try {
			return file.isPresent() ? file.get().image(width, monitor) : pdf.image(image).getImage();
		} catch (UnreadablePictureException e) {
			throw new IOException(e.getMessage(), e);
		}
	}

	/** How wide it is in pixels; of what has none, as it would have to be. @param width that it is shown in, mm */
	public int width(ImageBytes image, int page, double width) throws IOException {
		Optional<PictureFile> file = file(new Page(image, page));
		try {
			return file.isPresent() ? file.get().drawnFor(width).width() : pdf.image(image).getWidth();
		} catch (UnreadablePictureException e) {
			throw new IOException(e.getMessage(), e);
		}
	}

	private PDXObject made(ImageBytes image, Optional<PictureFile> found, Monitor monitor)
			throws IOException, UnreadablePictureException {
		PictureFile file = found.orElse(null);
		if (file == null) {
			return pdf.image(image);
		} else if (file.format() == PictureFormat.PDF) {
			return PageForm.of(pdf.document(), bytes(image), file.page(), pdf.group(Step.of(OperationKind.PRINT)));
		} else if (file.format() == PictureFormat.SVG) {
			return SvgForm.of(pdf.document(), file, monitor).form();
		} else if (file.format() == PictureFormat.WEBP || !file.isUpright()) {
			return pixels(file, monitor);
		}
		return pdf.image(image);
	}

	private PDXObject pixels(PictureFile file, Monitor monitor) throws IOException, UnreadablePictureException {
		return LosslessFactory.createFromImage(pdf.document(), file.pixels(monitor).image());
	}

	/** Empty for a damaged one: as much of it is printed as the job shows. */
	private Optional<PictureFile> file(Page from) throws IOException {
		Optional<PictureFile> file = files.get(from);
		if (file == null) {
			try {
				file = Optional.of(PictureFile.of("", bytes(from.image), from.page));
			} catch (UnreadablePictureException e) {
				file = Optional.empty();
			}
			files.put(from, file);
		}
		return file;
	}

	private static byte[] bytes(ImageBytes image) throws IOException {
		try (InputStream in = image.open()) {
			return in.readAllBytes();
		}
	}
}
