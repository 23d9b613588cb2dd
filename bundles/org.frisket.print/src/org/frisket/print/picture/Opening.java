package org.frisket.print.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;

import javax.imageio.stream.ImageInputStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.print.internal.drawn.DrawnArt;
import org.frisket.print.internal.drawn.PdfArt;
import org.frisket.print.internal.drawn.SvgArt;

/** From the bytes of a file to what its head says. */
final class Opening {

	/** Files that are drawn are read whole: more than any sheet of art has. */
	private static final int MOST_BYTES = 256 << 20;
	private static final int BUFFER = 1 << 16;
	private static final int MEGABYTE = 1 << 20;

	private final String name;
	private final PictureSource source;
	private final int page;

	Opening(String name, PictureSource source, int page) {
		this.name = name;
		this.source = source;
		this.page = page;
	}

	PictureFile open() throws UnreadablePictureException {
		try (ImageInputStream in = source.open()) {
			byte[] magic = new byte[Magic.LENGTH];
			int read = in.read(magic);
			if (read <= 0) {
				throw refusal(Messages.PictureFile_empty, null);
			}
			Magic kind = Magic.of(magic, read);
			if (kind.format().isEmpty()) {
				throw refusal(NLS.bind(Messages.PictureFile_unknown, kind.name()), null);
			}
			PictureFormat format = kind.format().get();
			if (page != 1 && format != PictureFormat.PDF) {
				throw refusal(NLS.bind(Messages.PictureFile_onePage, page), null);
			}
			return format.isDrawn() ? drawn(in, format) : pixels(in, format);
		} catch (IOException e) {
			throw refusal(e.getMessage(), e);
		}
	}

	private UnreadablePictureException refusal(String reason, Exception cause) {
		return new UnreadablePictureException(name, reason, cause);
	}

	private PictureFile drawn(ImageInputStream in, PictureFormat format) throws IOException, UnreadablePictureException {
		byte[] bytes = whole(in);
		DrawnArt art = format == PictureFormat.PDF ? PdfArt.of(bytes, page) : SvgArt.of(bytes, Opening::embedded);
		return new PictureFile(name, source, format, DrawnHead.usual(art), art, page);
	}

	private byte[] whole(ImageInputStream in) throws IOException, UnreadablePictureException {
		in.seek(0);
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		byte[] buffer = new byte[BUFFER];
		for (int read = in.read(buffer); read > 0; read = in.read(buffer)) {
			bytes.write(buffer, 0, read);
			if (bytes.size() > MOST_BYTES) {
				throw refusal(NLS.bind(Messages.PictureFile_large, MOST_BYTES / MEGABYTE), null);
			}
		}
		return bytes.toByteArray();
	}

	/** A picture that is kept in an SVG: one with pixels, for others could hold pictures again. */
	private static BufferedImage embedded(byte[] file, long most) throws UnreadablePictureException {
		Magic kind = Magic.of(file, Math.min(file.length, Magic.LENGTH));
		if (kind.format().isPresent() && kind.format().get().isDrawn()) {
			throw new UnreadablePictureException("", kind.name(), null);
		}
		PictureFile picture = PictureFile.of("", file);
		if ((long) picture.width() * picture.height() > most) {
			throw new UnreadablePictureException("", Messages.PictureFile_tooLarge, null);
		}
		return picture.pixels(Monitor.NONE).image();
	}

	private PictureFile pixels(ImageInputStream in, PictureFormat format) throws IOException, UnreadablePictureException {
		Head head = new Head();
		try {
			read(in, format, head);
		} catch (EOFException e) {
			throw refusal(NLS.bind(Messages.PictureFile_brokenOff, in.getStreamPosition()), e);
		} catch (IndexOutOfBoundsException e) {
			throw refusal(Messages.PictureFile_damaged, e);
		}
		if (format == PictureFormat.WEBP && head.frames > 1) {
			throw refusal(Messages.PictureFile_animatedWebp, null);
		}
		return new PictureFile(name, source, format, head, null, 1);
	}

	private static void read(ImageInputStream in, PictureFormat format, Head head) throws IOException {
		switch (format) {
		case PNG -> OtherHeads.png(in, head);
		case JPEG -> JpegHead.read(in, head);
		case GIF -> OtherHeads.gif(in, head);
		case BMP -> OtherHeads.bmp(in, head);
		case TIFF -> TiffTags.read(in, 0, head, false);
		case WEBP -> WebpHead.read(in, head);
		case SVG, PDF -> throw new IllegalArgumentException(format.name());
		}
	}
}
