package org.frisket.print.picture;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.print.picture.PictureRemark.Severity;

/**
 * A file with a picture: PNG, JPEG, GIF, BMP or TIFF. All but the pixels is known from its head; nothing is decoded for it,
 * and a picture that is too large is refused there.
 */
public final class PictureFile {

	private static final long MILLION = 1_000_000;
	private static final int MAGIC = 16;

	/** Opens the file anew. */
	interface Source {
		ImageInputStream open() throws IOException;
	}

	private final String name;
	private final Source source;
	private final PictureFormat format;
	private final Head head;

	private PictureFile(String name, Source source, PictureFormat format, Head head) {
		this.name = name;
		this.source = source;
		this.format = format;
		this.head = head;
	}

	/** @throws UnreadablePictureException if it is not there, of no known kind, damaged in its head, or too large */
	public static PictureFile of(Path file) throws UnreadablePictureException {
		if (!Files.isRegularFile(file)) {
			throw new UnreadablePictureException(file.toString(), Messages.PictureFile_missing, null);
		}
		return of(file.toString(), () -> new FileImageInputStream(file.toFile()));
	}

	/** @param name for messages; see {@link #of(Path)} */
	public static PictureFile of(String name, byte[] bytes) throws UnreadablePictureException {
		return of(name, () -> new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes)));
	}

	private static PictureFile of(String name, Source source) throws UnreadablePictureException {
		Head head = new Head();
		try (ImageInputStream in = source.open()) {
			byte[] magic = new byte[MAGIC];
			int read = in.read(magic);
			if (read <= 0) {
				throw new UnreadablePictureException(name, Messages.PictureFile_empty, null);
			}
			Magic kind = Magic.of(magic, read);
			if (kind.format().isEmpty()) {
				throw new UnreadablePictureException(name, NLS.bind(Messages.PictureFile_unknown, kind.name()), null);
			}
			try {
				read(in, kind.format().get(), head);
			} catch (EOFException e) {
				throw new UnreadablePictureException(name, NLS.bind(Messages.PictureFile_brokenOff,
						in.getStreamPosition()), e);
			} catch (IndexOutOfBoundsException e) {
				throw new UnreadablePictureException(name, Messages.PictureFile_damaged, e);
			}
			return checked(new PictureFile(name, source, kind.format().get(), head));
		} catch (IOException e) {
			throw new UnreadablePictureException(name, e.getMessage(), e);
		}
	}

	private static void read(ImageInputStream in, PictureFormat format, Head head) throws IOException {
		switch (format) {
		case PNG -> OtherHeads.png(in, head);
		case JPEG -> JpegHead.read(in, head);
		case GIF -> OtherHeads.gif(in, head);
		case BMP -> OtherHeads.bmp(in, head);
		case TIFF -> TiffTags.read(in, 0, head, false);
		}
	}

	private static PictureFile checked(PictureFile file) throws UnreadablePictureException {
		Head head = file.head;
		if (head.width < 1 || head.height < 1) {
			throw new UnreadablePictureException(file.name, NLS.bind(Messages.PictureFile_noSize, head.width, head.height),
					null);
		}
		if ((long) head.width * head.height > Pixels.MOST) {
			throw new UnreadablePictureException(file.name, NLS.bind(Messages.PictureFile_tooLarge,
					new Object[] { head.width, head.height, Pixels.MOST / MILLION }), null);
		}
		return file;
	}

	/** As it was called. */
	public String name() {
		return name;
	}

	public PictureFormat format() {
		return format;
	}

	/** In pixels, turned as the file says it is to be seen. */
	public int width() {
		return head.isTurned() ? head.height : head.width;
	}

	/** In pixels, turned as the file says it is to be seen. */
	public int height() {
		return head.isTurned() ? head.width : head.height;
	}

	/** Across and down as it is to be seen; {@link Resolution#USUAL} where the file says nothing. */
	public Resolution resolution() {
		if (head.dpiX == 0) {
			return Resolution.assumed();
		}
		Resolution stored = new Resolution(head.dpiX, head.dpiY, Resolution.Source.FILE);
		return head.isTurned() ? stored.turned() : stored;
	}

	/** The ICC profile that the file's colours are meant in, as it stands there. */
	public Optional<byte[]> profile() {
		return head.profile.size() == 0 ? Optional.empty() : Optional.of(head.profile.toByteArray());
	}

	/** Whether its rows are stored in the order in which they are seen, so that a reader that knows no EXIF shows it as it is. */
	public boolean isUpright() {
		return head.orientation == 1;
	}

	/** Whether there is more than the one picture that is used. */
	public boolean isAnimated() {
		return head.frames > 1;
	}

	/** What is to be told before anything is decoded, at the resolution that it is to be printed with. */
	public List<PictureRemark> remarks(Resolution printed) {
		List<PictureRemark> remarks = new ArrayList<>();
		if (isAnimated()) {
			remarks.add(new PictureRemark(Severity.NOTE, "first-only", format == PictureFormat.TIFF
					? Messages.PictureFile_pages : Messages.PictureFile_animated));
		}
		if (printed.source() == Resolution.Source.ASSUMED) {
			remarks.add(new PictureRemark(Severity.CAUTION, "resolution-assumed",
					NLS.bind(Messages.PictureFile_assumed, Math.round(Resolution.USUAL))));
		}
		if (SrgbValues.isDamaged(head)) {
			remarks.add(new PictureRemark(Severity.CAUTION, "profile-unused", Messages.PictureFile_profile));
		}
		double least = Math.min(printed.x(), printed.y());
		if (least < Resolution.COARSE) {
			remarks.add(new PictureRemark(Severity.CAUTION, "resolution-low", NLS.bind(Messages.PictureFile_coarse,
					Math.round(least), Math.round(Resolution.COARSE))));
		}
		return remarks;
	}

	/**
	 * Decodes it, turned and in sRGB. Takes eight bytes a pixel while it works and leaves four.
	 *
	 * @throws UnreadablePictureException if it is damaged, or the memory does not suffice
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public Pixels pixels(Monitor monitor) throws UnreadablePictureException {
		return new PictureDecoder(name, source, format, head).decode(monitor);
	}

	/**
	 * The same of a file that breaks off or is damaged, as far as there is a picture.
	 *
	 * @param damage told what the file lacks, as its decoder says it
	 * @throws UnreadablePictureException if there is no picture, or the memory does not suffice
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public Pixels pixels(Monitor monitor, Consumer<String> damage) throws UnreadablePictureException {
		return new PictureDecoder(name, source, format, head).decode(monitor, damage);
	}
}
