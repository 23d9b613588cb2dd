package org.frisket.prepare.pictures;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.ImageBytes;

/**
 * The file of a picture. How large the picture is stands at its head, and is looked at before anything is decoded: what
 * is larger than {@link #MOST_PIXELS} is refused.
 */
public final class PictureFile {

	/** A square metre at 250 dots to the inch; 400 MB when decoded. */
	public static final long MOST_PIXELS = 100_000_000L;

	private static final Set<String> KNOWN = Set.of("png", "jpeg", "gif", "bmp");
	private static final long MILLION = 1_000_000;

	private final ImageBytes bytes;
	private final String format;
	private final int width;
	private final int height;

	/**
	 * Pixels, and what is wrong with them.
	 *
	 * @param damage what the file lacks, as its decoder says it; empty for a sound one
	 */
	public record Decoded(BufferedImage image, Optional<String> damage) {
	}

	private PictureFile(ImageBytes bytes, String format, int width, int height) {
		this.bytes = bytes;
		this.format = format;
		this.width = width;
		this.height = height;
	}

	/**
	 * Reads the head of a file: PNG, JPEG, GIF or BMP.
	 *
	 * @throws UnreadablePictureException if it is none of these, or is too large
	 */
	public static PictureFile of(ImageBytes bytes) throws UnreadablePictureException {
		if (bytes == null || bytes.size() == 0) {
			throw new UnreadablePictureException(Messages.PictureFile_nothing);
		}
		PictureFile file;
		try (ImageInputStream in = new MemoryCacheImageInputStream(bytes.open())) {
			ImageReader reader = reader(in);
			try {
				file = new PictureFile(bytes, name(reader), reader.getWidth(0), reader.getHeight(0));
			} finally {
				reader.dispose();
			}
		} catch (IOException | RuntimeException e) {
			throw new UnreadablePictureException(reason(e), e);
		}
		if ((long) file.width * file.height > MOST_PIXELS) {
			throw new UnreadablePictureException(NLS.bind(Messages.PictureFile_tooLarge,
					new Object[] { file.width, file.height, MOST_PIXELS / MILLION }));
		}
		return file;
	}

	private static ImageReader reader(ImageInputStream in) throws UnreadablePictureException {
		for (Iterator<ImageReader> all = ImageIO.getImageReaders(in); all.hasNext();) {
			ImageReader reader = all.next();
			if (KNOWN.contains(name(reader))) {
				reader.setInput(in, true, true);
				return reader;
			}
			reader.dispose();
		}
		throw new UnreadablePictureException(Messages.PictureFile_unknown);
	}

	private static String name(ImageReader reader) {
		try {
			return reader.getFormatName().toLowerCase(Locale.ROOT);
		} catch (IOException e) {
			return "";
		}
	}

	private static String reason(Throwable e) {
		return e instanceof UnreadablePictureException || e.getMessage() != null ? e.getMessage()
				: e.getClass().getSimpleName();
	}

	/** In pixels. */
	public int width() {
		return width;
	}

	/** In pixels. */
	public int height() {
		return height;
	}

	/** As the file itself says, whatever it was called. */
	public String mediaType() {
		return "image/" + format;
	}

	/**
	 * Decodes it.
	 *
	 * @param longest how many pixels the longer side has at most; of a larger picture, only every second, third… pixel
	 *                is kept
	 * @throws UnreadablePictureException if it breaks off before there is a picture, or is of a kind that cannot be decoded
	 */
	public Decoded decode(int longest) throws UnreadablePictureException {
		try (ImageInputStream in = new MemoryCacheImageInputStream(bytes.open())) {
			ImageReader reader = reader(in);
			try {
				String[] damage = new String[1];
				reader.addIIOReadWarningListener((source, warning) -> damage[0] = warning);
				ImageReadParam all = reader.getDefaultReadParam();
				int step = Math.max(1, (int) Math.ceil((double) Math.max(width, height) / Math.max(1, longest)));
				all.setSourceRegion(new Rectangle(width, height));
				all.setSourceSubsampling(step, step, 0, 0);
				return new Decoded(reader.read(0, all), Optional.ofNullable(damage[0]));
			} finally {
				reader.dispose();
			}
		} catch (IOException | RuntimeException e) {
			throw new UnreadablePictureException(reason(e), e);
		}
	}
}
