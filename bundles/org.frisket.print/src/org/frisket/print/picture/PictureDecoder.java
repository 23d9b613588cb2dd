package org.frisket.print.picture;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.util.Iterator;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadProgressListener;
import javax.imageio.stream.ImageInputStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;

/** Decodes the first picture of a file by Java's own readers, without their cache on the disk. */
final class PictureDecoder {

	private static final int BYTES_PER_PIXEL = 8;
	/** Of the memory there may be, for one picture: it takes two pieces of half of that, and there is other work. */
	private static final double SHARE = 0.6;
	private static final int MEGABYTE = 1 << 20;

	private final String name;
	private final PictureFile.Source source;
	private final PictureFormat format;
	private final Head head;

	PictureDecoder(String name, PictureFile.Source source, PictureFormat format, Head head) {
		this.name = name;
		this.source = source;
		this.format = format;
		this.head = head;
	}

	Pixels decode(Monitor monitor) throws UnreadablePictureException {
		return decode(monitor, null);
	}

	/** @param damaged told of what the decoder misses; null to refuse the file */
	Pixels decode(Monitor monitor, Consumer<String> damaged) throws UnreadablePictureException {
		long needed = (long) head.width * head.height * BYTES_PER_PIXEL;
		long most = (long) (SHARE * Runtime.getRuntime().maxMemory());
		if (needed > most) {
			throw refusal(NLS.bind(Messages.PictureDecoder_memory, needed / MEGABYTE, most / MEGABYTE), null);
		}
		try (ImageInputStream in = source.open()) {
			return decode(in, monitor, damaged);
		} catch (CancellationException e) {
			throw e;
		} catch (OutOfMemoryError e) {
			// two large pieces at once: nothing else is short of memory for it
			throw refusal(NLS.bind(Messages.PictureDecoder_memory, needed / MEGABYTE, most / MEGABYTE), e);
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

	private Pixels decode(ImageInputStream in, Monitor monitor, Consumer<String> damaged)
			throws IOException, UnreadablePictureException {
		Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format.name());
		if (!readers.hasNext()) {
			throw refusal(NLS.bind(Messages.PictureFile_unknown, format), null);
		}
		ImageReader reader = readers.next();
		try {
			String[] damage = new String[1];
			reader.addIIOReadWarningListener((from, warning) -> damage[0] = warning);
			reader.addIIOReadProgressListener(new Progress(monitor));
			reader.setInput(in, true, format != PictureFormat.GIF);
			BufferedImage image = null;
			Raster raster;
			// as it is stored: what its values stand for is known here, and their profile is used here
			if (format == PictureFormat.JPEG || head.inks == Inks.CMYK && reader.canReadRaster()) {
				raster = reader.readRaster(0, null);
			} else {
				image = reader.read(0);
				raster = image.getRaster();
			}
			monitor.check();
			if (damage[0] != null && damaged != null) {
				damaged.accept(damage[0]);
			} else if (damage[0] != null) {
				throw refusal(NLS.bind(Messages.PictureDecoder_damaged, format, damage[0]), null);
			}
			return new PixelRows(head, image, raster).pixels(monitor);
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
