package org.frisket.prepare.pictures;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.awt.image.DirectColorModel;
import java.awt.image.Raster;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.model.ImageBytes;
import org.frisket.print.picture.PictureFormat;
import org.frisket.print.picture.PictureRemark;
import org.frisket.print.picture.Pixels;
import org.frisket.print.picture.Resolution;

/**
 * The file of a picture of a job, as {@link org.frisket.print.picture.PictureFile} reads it: how large it is stands at its
 * head, and is looked at before anything is decoded. SVG and pages of PDF have no pixels: they are drawn with as many as are
 * wanted.
 */
public final class PictureFile {

	/** Each may take most of the memory while it is decoded. */
	static final Object ONE_AT_A_TIME = new Object();

	private static final double MM_PER_INCH = 25.4;
	private static final int RED = 0xff0000;
	private static final int GREEN = 0xff00;
	private static final int BLUE = 0xff;
	private static final int OPAQUE = 0xff;
	private static final int ALPHA = 24;

	private final org.frisket.print.picture.PictureFile file;

	/**
	 * Pixels, and what is wrong with them.
	 *
	 * @param damage what the file lacks, as its decoder says it; empty for a sound one
	 */
	public record Decoded(BufferedImage image, Optional<String> damage) {
	}

	/** Something that reads or draws the file. */
	private interface Reading<T> {
		T read() throws org.frisket.print.picture.UnreadablePictureException, IOException;
	}

	private PictureFile(org.frisket.print.picture.PictureFile file) {
		this.file = file;
	}

	/** Its first page. @throws UnreadablePictureException see {@link #of(ImageBytes, int)} */
	public static PictureFile of(ImageBytes bytes) throws UnreadablePictureException {
		return of(bytes, 1);
	}

	/**
	 * Reads the head of a file.
	 *
	 * @param page from 1, of a PDF
	 * @throws UnreadablePictureException if it is of no kind that is read, is too large, or has no such page
	 */
	public static PictureFile of(ImageBytes bytes, int page) throws UnreadablePictureException {
		if (bytes == null || bytes.size() == 0) {
			throw new UnreadablePictureException(Messages.PictureFile_nothing);
		}
		return told(() -> {
			try (InputStream in = bytes.open()) {
				PictureFile file = new PictureFile(org.frisket.print.picture.PictureFile.of("", in.readAllBytes(), page));
				PictureSizes.keep(bytes, file);
				return file;
			}
		});
	}

	private static <T> T told(Reading<T> reading) throws UnreadablePictureException {
		try {
			return reading.read();
		} catch (org.frisket.print.picture.UnreadablePictureException e) {
			throw new UnreadablePictureException(e.reason(), e);
		} catch (IOException e) {
			throw new UnreadablePictureException(e.getMessage(), e);
		}
	}

	/** In pixels, turned as it is to be seen; of what has none, in pixels that it is drawn with. */
	public int width() {
		return file.width();
	}

	/** In pixels, as {@link #width()} is. */
	public int height() {
		return file.height();
	}

	/** In mm, at its own resolution. */
	public double trueWidth() {
		return file.trueWidth();
	}

	/** In mm, at its own resolution. */
	public double trueHeight() {
		return file.trueHeight();
	}

	/** From 1. */
	public int page() {
		return file.page();
	}

	/** How many pages the file has; 1 for all but PDF. */
	public int pages() {
		return file.pages();
	}

	/** Whether it has no pixels of its own, so that it is never too coarse. */
	public boolean isDrawn() {
		return file.format().isDrawn();
	}

	/** How fine the file says it is; what is usual where it says nothing. */
	public Resolution resolution() {
		return file.resolution();
	}

	/** What is to be told of it before it is decoded, at the resolution that it is to be printed with. */
	public List<PictureRemark> remarks(Resolution printed) {
		return file.remarks(printed);
	}

	/** Whether a reader that knows nothing of turned pictures shows it as it is to be seen. */
	public boolean isUpright() {
		return file.isUpright();
	}

	public PictureFormat format() {
		return file.format();
	}

	/** As the file itself says, whatever it was called; with the page, if it is not the first. */
	public String mediaType() {
		return file.mediaType();
	}

	/** The same as fine as is usual for a width in print, mm; what has pixels stays as it is. */
	PictureFile drawnFor(double width) throws UnreadablePictureException {
		return told(() -> new PictureFile(file.drawnFor(width)));
	}

	/** @param longest see {@link #decode(int, Monitor)} @throws UnreadablePictureException see there */
	public Decoded decode(int longest) throws UnreadablePictureException {
		return decode(longest, Monitor.NONE);
	}

	/**
	 * Decodes it, turned and in sRGB. Pixels that are not wanted take little memory.
	 *
	 * @param longest how many pixels the longer side has at most; what has no pixels of its own is drawn with as many, or with
	 *                as many as are usual if {@link Integer#MAX_VALUE} are asked for
	 * @throws UnreadablePictureException if it breaks off before there is a picture, or is of a kind that cannot be decoded
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public Decoded decode(int longest, Monitor monitor) throws UnreadablePictureException {
		int longer = Math.max(width(), height());
		int most = longest == Integer.MAX_VALUE ? longer : Math.max(1, longest);
		int wanted = (int) Math.max(1, Math.round((double) width() * most / longer));
		String[] damage = new String[1];
		synchronized (ONE_AT_A_TIME) {
			monitor.check();
			BufferedImage image = told(() -> file.image(isDrawn() ? wanted : Math.min(width(), wanted), monitor,
					reason -> damage[0] = reason));
			return new Decoded(plain(image), Optional.ofNullable(damage[0]));
		}
	}

	/**
	 * The same for a print.
	 *
	 * @param longest  its longer side there, mm
	 * @param drawnDpi how fine what has no pixels of its own is drawn; of others all pixels are taken
	 */
	public Decoded decodeFor(double longest, double drawnDpi, Monitor monitor) throws UnreadablePictureException {
		double most = Math.sqrt((double) Pixels.MOST * Math.max(width(), height()) / Math.min(width(), height()));
		return decode(isDrawn() ? (int) Math.ceil(Math.min(most - 1, longest / MM_PER_INCH * drawnDpi)) : Integer.MAX_VALUE,
				monitor);
	}

	/** @param damage told what the file lacks */
	Pixels pixels(Monitor monitor, Consumer<String> damage) throws UnreadablePictureException {
		return told(() -> file.pixels(monitor, damage));
	}

	/** One that nothing can be seen through has no alpha, which would only make files of it larger. */
	private static BufferedImage plain(BufferedImage image) {
		if (!(image.getRaster().getDataBuffer() instanceof DataBufferInt buffer) || buffer.getSize() != image.getWidth()
				* image.getHeight()) {
			return image;
		}
		for (int pixel : buffer.getData()) {
			if (pixel >>> ALPHA != OPAQUE) {
				return image;
			}
		}
		return new BufferedImage(new DirectColorModel(ALPHA, RED, GREEN, BLUE), Raster.createPackedRaster(buffer,
				image.getWidth(), image.getHeight(), image.getWidth(), new int[] { RED, GREEN, BLUE }, null), false, null);
	}
}
