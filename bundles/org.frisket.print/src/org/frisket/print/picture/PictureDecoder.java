package org.frisket.print.picture;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadProgressListener;
import javax.imageio.stream.ImageInputStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;

import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;

/** Decodes the first picture of a file by Java's own readers and one for WebP, without their cache on the disk. */
final class PictureDecoder {

	/** Formats of which a part can be read, and whose picture fills all of it. */
	private static final Set<PictureFormat> STEPPED = EnumSet.of(PictureFormat.PNG, PictureFormat.JPEG, PictureFormat.BMP,
			PictureFormat.TIFF);

	private final String name;
	private final PictureSource source;
	private final PictureFormat format;
	private final Head head;

	PictureDecoder(String name, PictureSource source, PictureFormat format, Head head) {
		this.name = name;
		this.source = source;
		this.format = format;
		this.head = head;
	}

	/**
	 * @param step    of its rows and columns, every how many is read; some formats are read whole
	 * @param damaged told of what the decoder misses; null to refuse the file
	 */
	Pixels decode(int step, Monitor monitor, Consumer<String> damaged) throws UnreadablePictureException {
		int taken = STEPPED.contains(format) ? Math.max(1, step) : 1;
		Head read = taken > 1 ? head.reduced(taken) : format == PictureFormat.WEBP ? head.inSrgb() : head;
		Memory.check(name, read);
		try (ImageInputStream in = source.open()) {
			return decode(in, read, taken, monitor, damaged);
		} catch (CancellationException e) {
			throw e;
		} catch (OutOfMemoryError e) {
			// two large pieces at once: nothing else is short of memory for it
			throw Memory.shortage(name, read, e);
		} catch (IOException | RuntimeException e) {
			throw refusal(NLS.bind(Messages.PictureDecoder_damaged, format, reason(e)), e);
		}
	}

	private static String reason(Exception e) {
		Throwable deepest = e;
		while (deepest.getCause() != null && deepest instanceof IIOException) {
			deepest = deepest.getCause();
		}
		return deepest.getMessage() == null ? deepest.getClass().getSimpleName() : deepest.getMessage();
	}

	private UnreadablePictureException refusal(String reason, Throwable cause) {
		return new UnreadablePictureException(name, reason, cause);
	}

	/** That of WebP is made by hand: services of other bundles are not found. */
	private ImageReader reader() throws UnreadablePictureException {
		if (format == PictureFormat.WEBP) {
			return new WebPImageReaderSpi().createReaderInstance(null);
		}
		Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format.name());
		if (!readers.hasNext()) {
			throw refusal(NLS.bind(Messages.PictureFile_unknown, format), null);
		}
		return readers.next();
	}

	private Pixels decode(ImageInputStream in, Head read, int step, Monitor monitor, Consumer<String> damaged)
			throws IOException, UnreadablePictureException {
		ImageReader reader = reader();
		try {
			String[] damage = new String[1];
			reader.addIIOReadWarningListener((from, warning) -> damage[0] = warning);
			reader.addIIOReadProgressListener(new Progress(monitor));
			reader.setInput(format == PictureFormat.WEBP ? new WatchedStream(in, monitor) : in, true,
					format != PictureFormat.GIF);
			ImageReadParam param = reader.getDefaultReadParam();
			param.setSourceSubsampling(step, step, 0, 0);
			BufferedImage image = null;
			Raster raster;
			// as it is stored: what its values stand for is known here, and their profile is used here
			if (format == PictureFormat.JPEG || head.inks == Inks.CMYK && reader.canReadRaster()) {
				raster = reader.readRaster(0, param);
			} else {
				image = reader.read(0, param);
				raster = image.getRaster();
			}
			monitor.check();
			if (damage[0] != null && !SrgbValues.isDamaged(head)) {
				if (damaged != null) {
					damaged.accept(damage[0]);
				} else {
					throw refusal(NLS.bind(Messages.PictureDecoder_damaged, format, damage[0]), null);
				}
			}
			return new PixelRows(read, image, raster).pixels(monitor);
		} finally {
			reader.dispose();
		}
	}

	/** Calls the reader off when the user does. */
	private record Progress(Monitor monitor) implements IIOReadProgressListener {

		@Override
		public void imageProgress(ImageReader reader, float percentage) {
			monitor.worked(percentage / 100);
			if (monitor.isCancelled()) {
				reader.abort();
				// not all look at that
				throw new CancellationException();
			}
		}

		@Override
		public void readAborted(ImageReader reader) {
			throw new CancellationException();
		}

		@Override
		public void sequenceStarted(ImageReader reader, int index) {
			// not told
		}

		@Override
		public void sequenceComplete(ImageReader reader) {
			// not told
		}

		@Override
		public void imageStarted(ImageReader reader, int index) {
			// not told
		}

		@Override
		public void imageComplete(ImageReader reader) {
			// not told
		}

		@Override
		public void thumbnailStarted(ImageReader reader, int image, int thumbnail) {
			// not told
		}

		@Override
		public void thumbnailProgress(ImageReader reader, float percentage) {
			// not told
		}

		@Override
		public void thumbnailComplete(ImageReader reader) {
			// not told
		}
	}
}
