package org.frisket.prepare.pictures;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.awt.image.DirectColorModel;
import java.awt.image.Raster;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.model.ImageBytes;
import org.frisket.print.picture.PictureRemark;
import org.frisket.print.picture.Pixels;
import org.frisket.print.picture.Resolution;

/**
 * The file of a picture of a job, as {@link org.frisket.print.picture.PictureFile} reads it: how large it is stands at its
 * head, and is looked at before anything is decoded.
 */
public final class PictureFile {

	private static final int RED = 0xff0000;
	private static final int GREEN = 0xff00;
	private static final int BLUE = 0xff;

	private final ImageBytes bytes;
	private final org.frisket.print.picture.PictureFile file;

	/**
	 * Pixels, and what is wrong with them.
	 *
	 * @param damage what the file lacks, as its decoder says it; empty for a sound one
	 */
	public record Decoded(BufferedImage image, Optional<String> damage) {
	}

	private PictureFile(ImageBytes bytes, org.frisket.print.picture.PictureFile file) {
		this.bytes = bytes;
		this.file = file;
	}

	/**
	 * Reads the head of a file.
	 *
	 * @throws UnreadablePictureException if it is of no kind that is read, or is too large
	 */
	public static PictureFile of(ImageBytes bytes) throws UnreadablePictureException {
		if (bytes == null || bytes.size() == 0) {
			throw new UnreadablePictureException(Messages.PictureFile_nothing);
		}
		try (InputStream in = bytes.open()) {
			PictureFile file = new PictureFile(bytes, org.frisket.print.picture.PictureFile.of("", in.readAllBytes()));
			PictureSizes.keep(bytes, file);
			return file;
		} catch (org.frisket.print.picture.UnreadablePictureException e) {
			throw new UnreadablePictureException(e.reason(), e);
		} catch (IOException e) {
			throw new UnreadablePictureException(e.getMessage(), e);
		}
	}

	/** In pixels, turned as it is to be seen. */
	public int width() {
		return file.width();
	}

	/** In pixels, turned as it is to be seen. */
	public int height() {
		return file.height();
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

	/** As the file itself says, whatever it was called. */
	public String mediaType() {
		return "image/" + file.format().name().toLowerCase(Locale.ROOT);
	}

	/**
	 * Decodes it, turned and in sRGB.
	 *
	 * @param longest how many pixels the longer side has at most; of a larger picture, only every second, third… pixel
	 *                is kept
	 * @throws UnreadablePictureException if it breaks off before there is a picture, or is of a kind that cannot be decoded
	 */
	public Decoded decode(int longest) throws UnreadablePictureException {
		DecodedPictures.Whole whole = DecodedPictures.of(bytes, this, Monitor.NONE);
		return new Decoded(image(reduced(whole.pixels(), longest)), whole.damage());
	}

	/** @param damage told what the file lacks */
	Pixels pixels(Monitor monitor, Consumer<String> damage) throws UnreadablePictureException {
		try {
			return file.pixels(monitor, damage);
		} catch (org.frisket.print.picture.UnreadablePictureException e) {
			throw new UnreadablePictureException(e.reason(), e);
		}
	}

	private static Pixels reduced(Pixels pixels, int longest) {
		int step = Math.max(1, (int) Math.ceil((double) Math.max(pixels.width(), pixels.height()) / Math.max(1, longest)));
		if (step == 1) {
			return pixels;
		}
		int width = (pixels.width() + step - 1) / step;
		int height = (pixels.height() + step - 1) / step;
		int[] argb = new int[width * height];
		for (int y = 0; y < height; y++) {
			for (int x = 0; x < width; x++) {
				argb[y * width + x] = pixels.at(x * step, y * step);
			}
		}
		return new Pixels(width, height, argb);
	}

	/** One that nothing can be seen through has no alpha, which would only make files of it larger. */
	private static BufferedImage image(Pixels pixels) {
		boolean opaque = true;
		for (int pixel : pixels.argb()) {
			opaque &= pixel >>> 24 == 0xff;
		}
		if (!opaque) {
			BufferedImage image = new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_ARGB);
			image.setRGB(0, 0, pixels.width(), pixels.height(), pixels.argb(), 0, pixels.width());
			return image;
		}
		return new BufferedImage(new DirectColorModel(24, RED, GREEN, BLUE),
				Raster.createPackedRaster(new DataBufferInt(pixels.argb().clone(), pixels.argb().length), pixels.width(),
						pixels.height(), pixels.width(), new int[] { RED, GREEN, BLUE }, null),
				false, null);
	}
}
