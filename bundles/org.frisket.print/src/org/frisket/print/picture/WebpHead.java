package org.frisket.print.picture;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

import javax.imageio.stream.ImageInputStream;

/** The chunks of a WebP file (RFC 9649): its size, colour profile and EXIF part, and whether it moves. */
final class WebpHead {

	private static final int MOST_PROFILE = 16 << 20;
	private static final int ANIMATED = 0x02;
	private static final int SIDE = 0x3fff;
	private static final String EXIF = "Exif\0\0";

	private final ImageInputStream in;
	private final Head head;
	private boolean canvas;

	private WebpHead(ImageInputStream in, Head head) {
		this.in = in;
		this.head = head;
	}

	/** Up to the end that the file names: what breaks off is told by that. */
	static void read(ImageInputStream in, Head head) throws IOException {
		in.setByteOrder(ByteOrder.LITTLE_ENDIAN);
		head.inks = Inks.RGB;
		new WebpHead(in, head).chunks();
	}

	private void chunks() throws IOException {
		in.seek(4);
		long end = 8 + in.readUnsignedInt();
		long at = 12;
		while (at + 8 <= end) {
			in.seek(at);
			byte[] name = new byte[4];
			in.readFully(name);
			long length = in.readUnsignedInt();
			chunk(new String(name, StandardCharsets.ISO_8859_1), length);
			at += 8 + length + (length & 1);
		}
		in.seek(end - 1);
		in.readUnsignedByte();
	}

	private void chunk(String name, long length) throws IOException {
		long start = in.getStreamPosition();
		switch (name) {
		case "VP8X" -> {
			canvas = true;
			head.frames = (in.readUnsignedByte() & ANIMATED) != 0 ? 2 : 1;
			in.skipBytes(3);
			head.width = 1 + threeBytes();
			head.height = 1 + threeBytes();
		}
		case "VP8 " -> {
			in.seek(start + 6);
			size(in.readUnsignedShort() & SIDE, in.readUnsignedShort() & SIDE);
		}
		case "VP8L" -> {
			in.seek(start + 1);
			int bits = in.readInt();
			size(1 + (bits & SIDE), 1 + (bits >>> 14 & SIDE));
		}
		case "ICCP" -> {
			byte[] profile = new byte[(int) Math.min(MOST_PROFILE, length)];
			in.readFully(profile);
			head.profile.write(profile);
		}
		case "EXIF" -> exif(start);
		default -> {
			// says nothing that is asked for here
		}
		}
	}

	/** Of the first picture, where no canvas says it for all. */
	private void size(int width, int height) {
		if (!canvas && head.width == 0) {
			head.width = width;
			head.height = height;
		}
	}

	private int threeBytes() throws IOException {
		return in.readUnsignedByte() | in.readUnsignedByte() << 8 | in.readUnsignedByte() << 16;
	}

	/** Some writers begin it as in a JPEG file. Damage there is no reason to refuse the picture. */
	private void exif(long start) {
		try {
			byte[] begin = new byte[EXIF.length()];
			in.readFully(begin);
			boolean named = EXIF.equals(new String(begin, StandardCharsets.ISO_8859_1));
			TiffTags.read(in, named ? start + begin.length : start, head, true);
		} catch (IOException | IndexOutOfBoundsException e) {
			head.orientation = 1;
		}
	}
}
